package org.nextpull.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.channel.EngineSetting;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.TimingPlan;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/** What a user typed to set the engine. */
sealed interface Typed {
    /** Nothing: as proposed. */
    record AsProposed() implements Typed {}

    /**
     * A setting; parts that are empty stay as proposed.
     *
     * @param setting the setting
     */
    record Setting(EngineSetting setting) implements Typed {}

    /** The day ends. */
    record Stop() implements Typed {}

    /** Say what can be typed. */
    record Help() implements Typed {}

    /**
     * Not understood.
     *
     * @param message what was wrong with it
     */
    record Wrong(String message) implements Typed {}

    /** Below this a single number is a mixture where an advance is set flat: nobody runs two degrees at full load. */
    double MOST_LAMBDA = 2;

    double LEAST_LAMBDA = 0.4;
    double MOST_DEG = 90;

    /** Understands a line. */
    static Typed of(String line, SweepPlan plan) {
        List<String> words = List.of(line.strip().toLowerCase(Locale.ROOT).split("\\s+"));
        return switch (words.get(0)) {
            case "" -> new AsProposed();
            case "stop", "quit", "exit" -> new Stop();
            case "help", "?" -> new Help();
            default -> numbers(words, plan);
        };
    }

    private static Typed numbers(List<String> words, SweepPlan plan) {
        List<Double> numbers = new ArrayList<>();
        for (String word : words) {
            OptionalDouble number = number(word);
            if (number.isEmpty()) {
                return new Wrong("\"" + word + "\" is neither a number nor a word that is known here; type help.");
            }
            numbers.add(number.getAsDouble());
        }
        boolean both = plan.timing().isPresent() && plan.mixture().isPresent();
        if (numbers.size() > (both ? 2 : 1)) {
            return new Wrong(
                    both ? "Type advance and lambda, no more." : "This plan sweeps one thing: type one number.");
        }
        double first = numbers.get(0);
        boolean lone =
                plan.timing().isEmpty() || (both && numbers.size() == 1 && !setsOffset(plan) && first < MOST_LAMBDA);
        if (lone) {
            return setting(plan, Optional.empty(), Optional.of(first));
        }
        return setting(plan, Optional.of(first), numbers.stream().skip(1).findFirst());
    }

    private static Typed setting(SweepPlan plan, Optional<Double> deg, Optional<Double> lambda) {
        if (deg.isPresent() && Math.abs(deg.get()) > MOST_DEG) {
            return new Wrong("No engine runs at " + deg.get() + " deg.");
        }
        if (lambda.isPresent() && (lambda.get() < LEAST_LAMBDA || lambda.get() > MOST_LAMBDA)) {
            return new Wrong("No engine runs at lambda " + lambda.get() + ".");
        }
        Optional<Advance> advance = deg.map(Advance::ofDeg);
        return new Setting(EngineSetting.ofNumbers(
                setsOffset(plan) ? Optional.empty() : advance,
                setsOffset(plan) ? advance : Optional.empty(),
                lambda.map(Lambda::of)));
    }

    private static boolean setsOffset(SweepPlan plan) {
        return plan.timing()
                .map(timing -> timing.sets() == TimingPlan.Sets.OFFSET)
                .orElse(false);
    }

    /** A number as people type it, with a point or a comma. */
    static OptionalDouble number(String word) {
        String plain = word.replace(',', '.');
        return plain.matches("[+-]?(\\d{1,9}(\\.\\d{0,9})?|\\.\\d{1,9})")
                ? OptionalDouble.of(Double.parseDouble(plain))
                : OptionalDouble.empty();
    }
}
