package org.nextpull.report.html;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.nextpull.advice.Chosen;
import org.nextpull.advice.Verdict;
import org.nextpull.report.Shown;
import org.nextpull.response.Figures;
import org.nextpull.response.MeasuredPull;
import org.nextpull.scatter.Scatter;
import org.nextpull.session.Session;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.Quantity;

/**
 * What the day changed: from the first pull that counts to those with the setting that stays.
 *
 * @param first the first that counts
 * @param same those with the setting that stays, in order, one or more
 */
record BeforeAndAfter(SessionResult result, Shown shown, MeasuredPull first, List<MeasuredPull> same) {
    private static final double INTERVAL = 0.9;

    /** Empty where nothing is chosen, or no clean pull beside the first was run with it. */
    static Optional<BeforeAndAfter> of(SessionResult result, Shown shown) {
        List<MeasuredPull> used =
                result.pulls().stream().filter(MeasuredPull::isUsed).toList();
        Optional<Chosen> chosen = result.verdict().flatMap(Verdict::chosen);
        if (used.size() < 2 || chosen.isEmpty()) {
            return Optional.empty();
        }
        MeasuredPull first = used.get(0);
        List<MeasuredPull> last = used.stream()
                .filter(pull -> result.isClean(pull)
                        && pull.number() != first.number()
                        && hasSetting(result, pull, chosen.get()))
                .toList();
        return last.isEmpty() ? Optional.empty() : Optional.of(new BeforeAndAfter(result, shown, first, last));
    }

    private static boolean hasSetting(SessionResult result, MeasuredPull pull, Chosen chosen) {
        if (chosen.setting().map().isPresent()) {
            // a map is proven by the last clean pull; those before it ran other maps
            return chosen.proof().standing() == Chosen.Standing.PROVEN
                    && result.pulls().stream()
                            .filter(one -> one.isUsed() && result.isClean(one))
                            .max(Comparator.comparingDouble(MeasuredPull::order))
                            .filter(proof -> proof.number() == pull.number())
                            .isPresent();
        }
        return Session.sameSetting(result.plan()).isRun(chosen.setting(), pull);
    }

    /** The last with the setting that stays. */
    MeasuredPull last() {
        return same.get(same.size() - 1);
    }

    /** Averages and peaks of the first setting and of the one that stays, with the interval of the change of the average. */
    Section.Grid grid() {
        String torque = shown.unit(Quantity.TORQUE).sign();
        String power = shown.unit(Quantity.POWER).sign();
        Section.Grid grid = Section.Grid.of(
                "Before: pull " + first.number() + ". After: "
                        + same.stream()
                                .map(pull -> String.valueOf(pull.number()))
                                .collect(Collectors.joining(", ", "pull ", "."))
                        + " Corrected figures; the change of the average with its 90 % interval from pull to pull",
                "",
                "before",
                "at rpm",
                "after",
                "at rpm",
                "change");
        grid = row(
                grid,
                "average torque, " + torque,
                figures -> figures.meanTorque().map(one -> new Figure(one.newtonMetres(), OptionalDouble.empty())),
                shown::torque);
        grid = row(
                grid,
                "peak torque, " + torque,
                figures -> figures.peakTorque()
                        .map(one -> new Figure(one.torque().newtonMetres(), OptionalDouble.of(one.rpm()))),
                shown::torque);
        return row(
                grid,
                "peak power, " + power,
                figures ->
                        figures.peakPower().map(one -> new Figure(one.power().watts(), OptionalDouble.of(one.rpm()))),
                shown::power);
    }

    /** An average, or a peak with its speed. */
    private record Figure(double si, OptionalDouble rpm) {
        String speed() {
            return rpm.isPresent() ? Shown.fixed(rpm.getAsDouble(), 0) : "";
        }
    }

    /** The peaks are those of the first and of the last pull; the average is that of all pulls with the setting that stays. */
    private Section.Grid row(
            Section.Grid grid,
            String name,
            Function<Figures, Optional<Figure>> figure,
            Function<Double, String> number) {
        Optional<Figure> before = first.figures().flatMap(figure);
        Optional<Figure> proof = last().figures().flatMap(figure);
        if (before.isEmpty() || proof.isEmpty()) {
            return grid;
        }
        boolean isAverage = proof.get().rpm().isEmpty();
        double after = isAverage
                ? same.stream()
                        .flatMap(pull -> pull.figures().flatMap(figure).stream())
                        .mapToDouble(Figure::si)
                        .average()
                        .orElseThrow()
                : proof.get().si();
        return grid.row(
                name,
                number.apply(before.get().si()),
                before.get().speed(),
                number.apply(after),
                proof.get().speed(),
                change(before.get().si(), after, isAverage ? same.size() : 0));
    }

    private String change(double before, double after, int pulls) {
        double percent = 100 * (after / before - 1);
        Optional<Scatter> scatter = pulls > 0 ? result.scatter() : Optional.empty();
        return String.format(Locale.ROOT, "%+.1f %%", percent)
                + scatter.map(known ->
                                String.format(Locale.ROOT, " \u00b1 %.1f", known.differencePercent(INTERVAL, 1, pulls)))
                        .orElse("");
    }
}
