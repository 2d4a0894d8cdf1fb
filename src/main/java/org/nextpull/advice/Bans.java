package org.nextpull.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.plan.Limit;
import org.nextpull.response.LimitMet;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Lambda;

/**
 * What the day's knock and limits forbid. Knock at advance a, lambda l and fuel F forbids a - margin and above at l and leaner on F,
 * and so forbids leaner at that advance. A lean limit forbids that mixture and leaner; an exhaust that was too hot forbids further
 * retard and that mixture and leaner. Pulls that give no response still ban.
 */
final class Bans {
    private final List<Ban> bans;

    private Bans(List<Ban> bans) {
        this.bans = List.copyOf(bans);
    }

    /**
     * Gathers the bans of a day.
     *
     * @param timing the timing factor; empty when the plan has none
     * @param pulls all pulls of the day, whatever their standing, without those whose ban the operator lifted by name
     * @param marginDeg the plan's knock margin
     */
    static Bans of(Optional<Axis> timing, List<MeasuredPull> pulls, double marginDeg) {
        List<Ban> found = new ArrayList<>();
        for (MeasuredPull pull : pulls) {
            OptionalDouble advance = timing.map(axis -> axis.of(pull)).orElse(OptionalDouble.empty());
            if (pull.knock().isHeard()) {
                found.add(new Ban(Limit.KNOCK, pull, shifted(advance, -marginDeg)));
            }
            for (LimitMet met : pull.limitsMet()) {
                if (met.limit() == Limit.LEAN || met.limit() == Limit.EXHAUST) {
                    found.add(new Ban(met.limit(), pull, advance));
                }
            }
        }
        return new Bans(found);
    }

    /** Lowest forbidden advance at a mixture on a fuel; with the mixture unknown, at any. */
    OptionalDouble advanceCeiling(Optional<String> fuel, OptionalDouble lambda) {
        return bans.stream()
                .filter(ban -> ban.limit == Limit.KNOCK && ban.isOn(fuel) && ban.reachesMixture(lambda))
                .flatMap(ban -> ban.advance.stream().boxed())
                .mapToDouble(Double::doubleValue)
                .min();
    }

    /** The advance below which an exhaust that was too hot forbids to retard, at a mixture no richer than that of the hot pull. */
    OptionalDouble retardFloor(Optional<String> fuel, OptionalDouble lambda) {
        return bans.stream()
                .filter(ban -> ban.limit == Limit.EXHAUST && ban.isOn(fuel) && ban.reachesMixture(lambda))
                .flatMap(ban -> ban.advance.stream().boxed())
                .mapToDouble(Double::doubleValue)
                .max();
    }

    /** Richest forbidden lambda at an advance on a fuel. */
    OptionalDouble leanCeiling(Optional<String> fuel, OptionalDouble advance) {
        return bans.stream()
                .filter(ban -> ban.isOn(fuel) && ban.reachesAdvance(advance))
                .flatMap(ban -> ban.lambda().stream().boxed())
                .mapToDouble(Double::doubleValue)
                .min();
    }

    /** Lowest advance that knock forbids on any fuel of the day. */
    OptionalDouble lowestAdvanceOfDay() {
        return bans.stream()
                .filter(ban -> ban.limit == Limit.KNOCK)
                .flatMap(ban -> ban.advance.stream().boxed())
                .mapToDouble(Double::doubleValue)
                .min();
    }

    private static OptionalDouble shifted(OptionalDouble value, double by) {
        return value.isPresent() ? OptionalDouble.of(value.getAsDouble() + by) : value;
    }

    /**
     * One event that forbids.
     *
     * @param limit what was met
     * @param pull the pull that met it
     * @param advance lowest forbidden advance for knock, the advance of the pull for others
     */
    private record Ban(Limit limit, MeasuredPull pull, OptionalDouble advance) {
        OptionalDouble lambda() {
            Optional<Lambda> richest = pull.setting().lambda();
            return richest.isPresent() ? OptionalDouble.of(richest.get().value()) : OptionalDouble.empty();
        }

        boolean isOn(Optional<String> fuel) {
            return pull.setting().fuel().equals(fuel);
        }

        /** Mixtures that scatter by this much are one. */
        private static final double SAME_LAMBDA = 0.008;

        boolean reachesMixture(OptionalDouble wanted) {
            return lambda().isEmpty()
                    || wanted.isEmpty()
                    || wanted.getAsDouble() >= lambda().getAsDouble() - SAME_LAMBDA;
        }

        boolean reachesAdvance(OptionalDouble wanted) {
            return limit != Limit.KNOCK
                    || advance.isEmpty()
                    || wanted.isEmpty()
                    || wanted.getAsDouble() >= advance.getAsDouble();
        }
    }
}
