package org.nextpull.curve;

import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.channel.Samples;
import org.nextpull.math.Series;
import org.nextpull.plan.DynoFacts;
import org.nextpull.pull.SpeedSource;

/** How the shafts of a pull turn: along its axis, and the roller beside it where there is one. */
record ShaftSpeeds(Trace axis, SpeedSource.Axis kind, Optional<Trace> roller, OptionalDouble rollerRevPerAxisRev) {
    static Optional<ShaftSpeeds> of(Samples samples, SpeedSource speed, DynoFacts dyno) {
        OptionalDouble given = dyno.gearing().engineRevPerRollerRev();
        return Trace.of(samples, speed).map(axis -> {
            Optional<Trace> roller =
                    SpeedSource.roller(samples, dyno.gearing()).flatMap(source -> Trace.of(samples, source));
            OptionalDouble ratio = switch (speed.axis()) {
                case ROLLER -> OptionalDouble.of(1);
                case ENGINE_FROM_ROLLER -> inverse(given);
                case ENGINE -> {
                    OptionalDouble measured =
                            roller.map(trace -> ratio(trace, axis)).orElse(OptionalDouble.empty());
                    yield measured.isPresent() ? measured : inverse(given);
                }
            };
            return new ShaftSpeeds(axis, speed.axis(), roller, ratio);
        });
    }

    private static OptionalDouble inverse(OptionalDouble value) {
        return value.isPresent() ? OptionalDouble.of(1 / value.getAsDouble()) : value;
    }

    /** Median of one speed over the other where both turn. */
    private static OptionalDouble ratio(Trace over, Trace under) {
        Series times = over.timeS();
        double[] ratios = new double[times.size()];
        int count = 0;
        for (int row = 0; row < times.size(); row++) {
            double below = under.at(times.get(row)).orElse(0);
            if (below > 0 && over.value().get(row) > 0) {
                ratios[count++] = over.value().get(row) / below;
            }
        }
        return count == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(Series.copyOf(ratios, 0, count).median());
    }

    /** Acceleration of the axis in rpm/s. */
    Series axisRates(Series times) {
        return axis.slopesAt(times);
    }

    /** Acceleration of the roller in rpm/s: its own where it is logged. */
    Series rollerRates(Series times) {
        double ratio = rollerRevPerAxisRev.orElse(1);
        return roller.filter(trace -> trace.size() > 2)
                .map(trace -> trace.slopesAt(times))
                .orElseGet(() -> axisRates(times).times(ratio));
    }
}
