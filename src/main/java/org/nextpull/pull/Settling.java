package org.nextpull.pull;

import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.channel.Samples;

/**
 * Tells when the load has settled after the throttle opens or the speed or spark is set anew: from then on the torque changes between
 * one fifth of a second and the next by no more than one percent, or than its noise.
 */
final class Settling {
    private static final double PIECE_S = 0.2;
    private static final double PIECE_ROWS = 2;
    private static final double SETTLED_SHARE = 0.01;
    private static final double NOISES = 3;

    /** Cut off where neither torque nor power shows the load. */
    private static final double BLIND_S = 0.3;

    private final Samples samples;
    private final SpeedTrace trace;
    private final Optional<Effort> effort;

    Settling(Samples samples, SpeedTrace trace, Optional<Effort> effort) {
        this.samples = samples;
        this.trace = trace;
        this.effort = effort;
    }

    /** The point of a span at which the load has settled, at the latest {@code mostS} after its start. */
    int settledAt(Span span, double mostS) {
        double start = trace.timeS(span.first());
        if (effort.isEmpty()) {
            return firstAfter(span, Math.min(BLIND_S, mostS));
        }
        double piece = Math.max(PIECE_S, PIECE_ROWS * trace.usualStepS(span.first(), span.last()));
        int point = span.first();
        while (point < span.last() && trace.timeS(point) - start < mostS) {
            if (isSettled(point, span.last(), piece)) {
                return point;
            }
            point++;
        }
        return point;
    }

    private boolean isSettled(int point, int last, double pieceS) {
        Piece now = piece(point, last, 0, pieceS);
        Piece soon = piece(point, last, pieceS, pieceS);
        Piece later = piece(point, last, 2 * pieceS, pieceS);
        if (now.count < 2 || soon.count < 2 || later.count < 2) {
            return true;
        }
        double limit = Math.max(
                SETTLED_SHARE * Math.abs(later.mean()),
                NOISES * Math.sqrt(now.varianceOfMean() + soon.varianceOfMean()));
        return Math.abs(soon.mean() - now.mean()) <= limit && Math.abs(later.mean() - soon.mean()) <= limit;
    }

    private int firstAfter(Span span, double afterS) {
        int point = span.first();
        while (point < span.last() && trace.timeS(point) - trace.timeS(span.first()) < afterS) {
            point++;
        }
        return point;
    }

    private static Optional<Double> box(OptionalDouble value) {
        return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
    }

    private Piece piece(int from, int last, double afterS, double lengthS) {
        double start = trace.timeS(from) + afterS;
        Piece piece = new Piece();
        for (int point = from; point <= last && trace.timeS(point) < start + lengthS; point++) {
            if (trace.timeS(point) >= start) {
                int row = trace.row(point);
                effort.flatMap(source -> box(source.newtonMetres(samples, row))).ifPresent(piece::add);
            }
        }
        return piece;
    }

    /** Mean of a short piece and how sure it is; the noise is taken about a line, for the torque may well slope. */
    private static final class Piece {
        private int count;
        private double sum;
        private double differences;
        private double before;

        void add(double value) {
            if (count > 0) {
                differences += (value - before) * (value - before);
            }
            before = value;
            sum += value;
            count++;
        }

        double mean() {
            return sum / count;
        }

        double varianceOfMean() {
            return differences / (2.0 * (count - 1)) / count;
        }
    }
}
