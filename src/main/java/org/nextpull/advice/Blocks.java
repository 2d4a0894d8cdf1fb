package org.nextpull.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.nextpull.plan.Limit;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Lambda;

/**
 * What the day's knock and limits block. Knock at advance a, lambda l and fuel F blocks a - margin and above at l and leaner on F,
 * and so blocks leaner at that advance. A lean limit blocks that mixture and leaner; an exhaust that was too hot blocks further
 * retard and that mixture and leaner. Pulls that give no response still block.
 */
final class Blocks {
    private final List<Block> blocks;

    private Blocks(List<Block> blocks) {
        this.blocks = List.copyOf(blocks);
    }

    /**
     * Gathers the blocks of a day.
     *
     * @param timing the timing factor; empty when the plan has none
     * @param mixture the mixture factor; empty when the plan has none, and all mixtures near each other are then one
     * @param pulls the pulls of the day that met something, whatever their standing, without those whose block the operator lifted by name
     * @param marginDeg the plan's knock margin
     */
    static Blocks of(Optional<Axis> timing, Optional<Axis> mixture, List<MeasuredPull> pulls, double marginDeg) {
        double alike = mixture.map(axis -> axis.step().resolution() / 2).orElse(DayView.ONE_MIXTURE);
        List<Block> found = new ArrayList<>();
        for (MeasuredPull pull : pulls) {
            OptionalDouble advance = timing.map(axis -> axis.of(pull)).orElse(OptionalDouble.empty());
            if (pull.knock().isHeard()) {
                found.add(new Block(Limit.KNOCK, pull, shifted(advance, -marginDeg), alike));
            }
            for (MeasuredPull.LimitMet met : pull.limitsMet()) {
                if (met.limit() == Limit.LEAN || met.limit() == Limit.EXHAUST) {
                    found.add(new Block(met.limit(), pull, advance, alike));
                }
            }
        }
        return new Blocks(found);
    }

    /** Lowest forbidden advance at a mixture on a fuel; with the mixture unknown, at any. */
    OptionalDouble advanceCeiling(Optional<String> fuel, OptionalDouble lambda) {
        return blocks.stream()
                .filter(block -> block.limit == Limit.KNOCK && block.isOn(fuel) && block.reachesMixture(lambda))
                .flatMap(block -> block.advance.stream().boxed())
                .mapToDouble(Double::doubleValue)
                .min();
    }

    /** Richest forbidden lambda at an advance on a fuel. */
    OptionalDouble leanCeiling(Optional<String> fuel, OptionalDouble advance) {
        return richest(blocks.stream().filter(block -> block.isOn(fuel) && block.reachesAdvance(advance)));
    }

    /** Richest lambda that a limit other than knock blocks on a fuel, whatever the advance. */
    OptionalDouble leanCeilingOfLimits(Optional<String> fuel) {
        return richest(blocks.stream().filter(block -> block.isOn(fuel) && block.limit != Limit.KNOCK));
    }

    private static OptionalDouble richest(Stream<Block> blocks) {
        return blocks.flatMap(block -> block.richestForbidden().stream().boxed())
                .mapToDouble(Double::doubleValue)
                .min();
    }

    /** Whether knock was heard that still blocks something on a fuel. */
    boolean hasKnock(Optional<String> fuel) {
        return blocks.stream().anyMatch(block -> block.limit == Limit.KNOCK && block.isOn(fuel));
    }

    private static OptionalDouble shifted(OptionalDouble value, double by) {
        return value.isPresent() ? OptionalDouble.of(value.getAsDouble() + by) : value;
    }

    /**
     * One event that blocks.
     *
     * @param limit what was met
     * @param pull the pull that met it
     * @param advance lowest forbidden advance for knock, the advance of the pull for others
     * @param alike asked mixtures that differ by no more are one
     */
    private record Block(Limit limit, MeasuredPull pull, OptionalDouble advance, double alike) {
        private static final double NOTHING = 1e-9;

        boolean isOn(Optional<String> fuel) {
            return pull.setting().isOnFuel(fuel);
        }

        /**
         * The richest mixture that is forbidden: the richer of asked and measured. Where none was asked, the measured one scatters,
         * and mixtures that count as one sweep are forbidden together.
         */
        OptionalDouble richestForbidden() {
            Optional<Double> measured = pull.setting().lambda().map(Lambda::value);
            Optional<Double> asked = pull.asked().lambda().map(Lambda::value);
            if (asked.isPresent()) {
                return OptionalDouble.of(Math.min(asked.get(), measured.orElse(asked.get())) - alike);
            }
            return measured.map(value -> OptionalDouble.of(value - DayView.ONE_MIXTURE))
                    .orElse(OptionalDouble.empty());
        }

        boolean reachesMixture(OptionalDouble wanted) {
            OptionalDouble richest = richestForbidden();
            return richest.isEmpty() || wanted.isEmpty() || wanted.getAsDouble() >= richest.getAsDouble() - NOTHING;
        }

        boolean reachesAdvance(OptionalDouble wanted) {
            return limit != Limit.KNOCK
                    || advance.isEmpty()
                    || wanted.isEmpty()
                    || wanted.getAsDouble() >= advance.getAsDouble() - NOTHING;
        }
    }
}
