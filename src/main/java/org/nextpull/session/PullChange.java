package org.nextpull.session;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.nextpull.response.Figures;
import org.nextpull.response.MeasuredPull;
import org.nextpull.response.Reading;

/**
 * What one pull reads beside the others of its configuration, one of a held speed beside those of that speed.
 *
 * @param response its response in N.m or W; empty where it gives none
 * @param best beside the best clean one of the others
 * @param baseline beside the first of them
 */
public record PullChange(OptionalDouble response, Optional<Against> best, Optional<Against> baseline) {
    private static final double PERCENT = 100;

    /**
     * One pull against another.
     *
     * @param pull number of the other
     * @param percent how much this one reads more, in percent of the other; negative when it reads less
     */
    public record Against(int pull, double percent) {}

    /** A pull beside those that were run before it. */
    public static PullChange of(SessionResult result, MeasuredPull pull) {
        Set<Integer> clean = result.pulls().stream()
                .filter(result::isClean)
                .map(MeasuredPull::number)
                .collect(Collectors.toSet());
        List<Reading> readings = Reading.of(result.pulls(), result.plan().goal().response()).stream()
                .filter(reading -> reading.pull().setting().isSameConfiguration(pull.setting()))
                .filter(reading -> reading.pull().order() <= pull.order())
                .filter(reading -> isAtOneSpeed(reading.pull(), pull))
                .toList();
        Optional<Reading> own = readings.stream()
                .filter(reading -> reading.pull().number() == pull.number())
                .findFirst();
        List<Reading> others = readings.stream()
                .filter(reading -> reading.pull().number() != pull.number())
                .toList();
        if (own.isEmpty()) {
            return new PullChange(OptionalDouble.empty(), Optional.empty(), Optional.empty());
        }
        return new PullChange(
                OptionalDouble.of(own.get().value()),
                others.stream()
                        .filter(other -> clean.contains(other.pull().number()))
                        .max(Comparator.comparingDouble(Reading::value))
                        .map(other -> against(own.get(), other)),
                others.stream()
                        .min(Comparator.comparingDouble(
                                reading -> reading.pull().order()))
                        .map(other -> against(own.get(), other)));
    }

    /** The speed at which a pull was held, as the day has it; empty for one over the band. */
    public static OptionalDouble heldRpm(MeasuredPull pull) {
        return pull.figures().stream()
                .flatMap(figures -> figures.rows().stream())
                .filter(row -> pull.isHeld())
                .mapToDouble(Figures.AtSpeed::rpm)
                .findFirst();
    }

    private static boolean isAtOneSpeed(MeasuredPull one, MeasuredPull other) {
        OptionalDouble rpm = heldRpm(one);
        OptionalDouble otherRpm = heldRpm(other);
        return (rpm.isPresent() && otherRpm.isPresent())
                ? HeldSpeeds.isOne(rpm.getAsDouble(), otherRpm.getAsDouble())
                : rpm.isEmpty() && otherRpm.isEmpty();
    }

    private static Against against(Reading own, Reading other) {
        return new Against(other.pull().number(), PERCENT * (own.value() / other.value() - 1));
    }
}
