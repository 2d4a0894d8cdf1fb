package org.nextpull.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.SparkMap;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.TimingPlan;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/**
 * A setting of the engine as a user types it, in numbers alone.
 *
 * @param setting what is to be set; parts that are empty stay as proposed; empty where it was not understood
 * @param wrong what was wrong with it
 */
record TypedSetting(Optional<EngineSetting> setting, Optional<String> wrong) {
    /** Below this a single number is a mixture where an advance is set flat: nobody runs two degrees at full load. */
    private static final double MOST_LAMBDA = 2;

    private static final double LEAST_LAMBDA = 0.4;
    private static final double MOST_DEG = 90;
    private static final int MOST_CHARACTERS = 40;

    private static TypedSetting notUnderstood(String message) {
        return new TypedSetting(Optional.empty(), Optional.of(message));
    }

    private static String quoted(String word) {
        return "\"" + (word.length() > MOST_CHARACTERS ? word.substring(0, MOST_CHARACTERS) + "..." : word) + "\"";
    }

    /** Understands numbers: spark and lambda where the plan sweeps both, else the one that it sweeps. Cells, as 3500:18, are a map. */
    static TypedSetting of(String line, SweepPlan plan) {
        List<Double> numbers = new ArrayList<>();
        List<String> words = List.of(line.strip().toLowerCase(Locale.ROOT).split("\\s+"));
        if (words.stream().anyMatch(word -> word.contains(":"))) {
            return map(words, plan);
        }
        for (String word : words) {
            OptionalDouble number = number(word);
            if (number.isEmpty()) {
                return notUnderstood(quoted(word) + " is neither a number nor a word that is known here; type help.");
            }
            numbers.add(number.getAsDouble());
        }
        boolean both = plan.timing().isPresent() && plan.mixture().isPresent();
        if (numbers.size() > (both ? 2 : 1)) {
            return notUnderstood(
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

    private static TypedSetting map(List<String> words, SweepPlan plan) {
        List<SparkMap.Cell> cells = new ArrayList<>();
        for (String word : words) {
            String[] pair = word.split(":", -1);
            OptionalDouble rpm = number(pair[0]);
            OptionalDouble deg = pair.length == 2 ? number(pair[1]) : OptionalDouble.empty();
            double before = cells.isEmpty() ? -1 : cells.get(cells.size() - 1).rpm();
            if (rpm.isEmpty()
                    || deg.isEmpty()
                    || rpm.getAsDouble() <= before
                    || Math.abs(deg.getAsDouble()) > MOST_DEG) {
                return notUnderstood("A map is rpm:degrees for each cell, the speeds rising, such as: 3500:18 5000:21; "
                        + quoted(word) + " is no such cell.");
            }
            cells.add(new SparkMap.Cell(rpm.getAsDouble(), Advance.ofDeg(deg.getAsDouble())));
        }
        boolean isMap = plan.timing().isPresent() && !setsOffset(plan);
        return isMap
                ? new TypedSetting(
                        Optional.of(EngineSetting.of(new SparkMap(cells), Optional.empty())), Optional.empty())
                : notUnderstood("This plan does not set the advance of each speed.");
    }

    private static TypedSetting setting(SweepPlan plan, Optional<Double> deg, Optional<Double> lambda) {
        if (deg.isPresent() && Math.abs(deg.get()) > MOST_DEG) {
            return notUnderstood("No engine runs at " + deg.get() + " deg.");
        }
        if (lambda.isPresent() && (lambda.get() < LEAST_LAMBDA || lambda.get() > MOST_LAMBDA)) {
            return notUnderstood("No engine runs at lambda " + lambda.get() + ".");
        }
        Optional<Advance> advance = deg.map(Advance::ofDeg);
        return new TypedSetting(
                Optional.of(EngineSetting.ofNumbers(
                        setsOffset(plan) ? Optional.empty() : advance,
                        setsOffset(plan) ? advance : Optional.empty(),
                        lambda.map(Lambda::of))),
                Optional.empty());
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
