package org.nextpull.advice;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.nextpull.channel.SparkMap;
import org.nextpull.plan.Limit;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Lambda;

/** How far a day may retard: not below an exhaust that was too hot, and no more than half a step where nobody watches the exhaust. */
final class RetardFloor {
    private static final double NOTHING = 1e-9;
    private static final double HALF = 0.5;
    /** What was too hot is not run again either. */
    private static final double ABOVE_HOT_DEG = 1e-3;

    private final DayView view;
    private final DayReadings maps;

    RetardFloor(DayView view, DayReadings maps) {
        this.view = view;
        this.maps = maps;
    }

    /** The least advance at each row, degrees; minus infinity where the exhaust is watched or no clean pull got there. */
    double[] unwatched(Exclusions exclusions, double[] rows) {
        boolean isWatched = view.guards().unwatched(Guards.Way.RETARD).isEmpty();
        return Arrays.stream(rows)
                .map(rpm -> {
                    double[] clean = exclusions.cleanDeg(rpm);
                    return isWatched || clean.length == 0
                            ? Double.NEGATIVE_INFINITY
                            : clean[0] - HALF * maps.plan().largestStepDeg();
                })
                .toArray();
    }

    /** The least advance at each row that pulls whose exhaust was too hot leave, but for what clean pulls as lean have proven. */
    double[] hot(double[] rows, Optional<Lambda> lambda) {
        List<TriedPull> tried = maps.tried();
        double[] floor = new double[rows.length];
        Arrays.fill(floor, Double.NEGATIVE_INFINITY);
        for (int i = 0; i < tried.size(); i++) {
            SparkMap hot = tried.get(i).spark();
            if (wasHot(maps.counting().get(i))
                    && isNoRicher(lambda, tried.get(i).lambda())) {
                for (int r = 0; r < rows.length; r++) {
                    double rpm = rows[r];
                    boolean isProven = tried.stream()
                            .anyMatch(pull -> pull.isClean()
                                    && pull.spark().degAt(rpm) < hot.degAt(rpm) - NOTHING
                                    && isNoRicher(pull.lambda(), lambda));
                    floor[r] = isProven ? floor[r] : Math.max(floor[r], hot.degAt(rpm) + ABOVE_HOT_DEG);
                }
            }
        }
        return floor;
    }

    private boolean wasHot(MeasuredPull pull) {
        return !view.day().lifted().contains(pull.number())
                && pull.limitsMet().stream().anyMatch(met -> met.limit() == Limit.EXHAUST);
    }

    /** Whether a mixture lies less than a step on the rich side of another; one that is not known does. */
    private boolean isNoRicher(Optional<Lambda> mixture, Optional<Lambda> of) {
        double step = view.mixture().map(axis -> axis.step().largest()).orElse(0.0);
        return mixture.isEmpty()
                || of.isEmpty()
                || mixture.get().value() > of.get().value() - step + NOTHING;
    }
}
