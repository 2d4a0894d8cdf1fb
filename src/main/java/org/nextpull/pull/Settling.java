package org.nextpull.pull;

import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.channel.Samples;

/**
 * Tells when the load has settled after the throttle opens or the speed or spark is set anew: as soon as the torque of a fifth of a
 * second lies on the straight line through the second that follows, within 1.5 % or its noise.
 */
record Settling(Samples samples, SpeedTrace trace, Optional<LoadSignal> effort) {
    private static final double UNIT_S = 0.2;
    private static final double UNIT_ROWS = 2;
    private static final double SETTLED_SHARE = 0.015;
    private static final double NOISES = 3;

    /** The line that follows, in units of time from the piece's start. */
    private static final double LATER_FROM = 2;

    private static final double LATER_TO = 7;
    private static final int LEAST_LATER_ROWS = 4;

    /** Variance of the line where the piece is, in variances of its mean: 1 + 12 (4/5)^2, for the piece is 4 units off a line 5 long. */
    private static final double EXTRAPOLATED = 8.7;

    /** Cut off where neither torque nor power shows the load. */
    private static final double BLIND_S = 0.3;

    /** The point of a span at which the load has settled, at the latest {@code mostS} after its start. */
    int settledAt(SpeedTrace.Points span, double mostS) {
        double start = trace.timeS(span.first());
        if (effort.isEmpty()) {
            return firstAfter(span, Math.min(BLIND_S, mostS));
        }
        double unit = Math.max(UNIT_S, UNIT_ROWS * trace.usualStepS(span.first(), span.last()));
        int point = span.first();
        while (point < span.last() && trace.timeS(point) - start < mostS) {
            if (isSettled(point, span.last(), unit)) {
                return point;
            }
            point++;
        }
        return point;
    }

    private boolean isSettled(int point, int last, double unitS) {
        double now = trace.timeS(point);
        Line piece = line(point, last, now, now + unitS);
        Line later = line(point, last, now + LATER_FROM * unitS, now + LATER_TO * unitS);
        if (piece.count < 2 || later.count < LEAST_LATER_ROWS) {
            return true;
        }
        double middle = now + unitS / 2;
        double noise = later.residualVariance() * (1.0 / piece.count + EXTRAPOLATED / later.count);
        double limit = Math.max(SETTLED_SHARE * Math.abs(later.mean()), NOISES * Math.sqrt(noise));
        return Math.abs(piece.mean() - later.at(middle)) <= limit;
    }

    private int firstAfter(SpeedTrace.Points span, double afterS) {
        int point = span.first();
        while (point < span.last() && trace.timeS(point) - trace.timeS(span.first()) < afterS) {
            point++;
        }
        return point;
    }

    private Line line(int from, int last, double fromS, double toS) {
        Line line = new Line(fromS);
        for (int point = from; point <= last && trace.timeS(point) < toS; point++) {
            if (trace.timeS(point) >= fromS) {
                OptionalDouble torque = effort.isPresent()
                        ? effort.get().newtonMetres(samples, trace.row(point))
                        : OptionalDouble.empty();
                if (torque.isPresent()) {
                    line.add(trace.timeS(point), torque.getAsDouble());
                }
            }
        }
        return line;
    }

    /** A straight line through torques over time. */
    private static final class Line {
        private final double origin;
        private int count;
        private double t;
        private double y;
        private double tt;
        private double ty;
        private double yy;

        Line(double origin) {
            this.origin = origin;
        }

        void add(double timeS, double value) {
            double u = timeS - origin;
            count++;
            t += u;
            y += value;
            tt += u * u;
            ty += u * value;
            yy += value * value;
        }

        double mean() {
            return y / count;
        }

        double at(double timeS) {
            return mean() + slope() * (timeS - origin - t / count);
        }

        private double slope() {
            double spread = tt - t * t / count;
            return spread > 0 ? (ty - t * y / count) / spread : 0;
        }

        double residualVariance() {
            double spread = tt - t * t / count;
            double left = yy - y * y / count - slope() * slope() * spread;
            return Math.max(0, left) / Math.max(1, count - 2);
        }
    }
}
