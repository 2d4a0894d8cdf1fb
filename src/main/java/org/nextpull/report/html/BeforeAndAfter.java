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
import org.nextpull.scatter.SameSetting;
import org.nextpull.session.Session;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.Quantity;

/**
 * What the day changed: from its first setting to the one that stays.
 *
 * @param start the first pull that counts, and those that ran its setting again, in order
 * @param same those with the setting that stays, in order, one or more
 */
record BeforeAndAfter(SessionResult result, Shown shown, List<MeasuredPull> start, List<MeasuredPull> same) {
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
        SameSetting alike = Session.sameSetting(result.plan());
        List<MeasuredPull> start = used.stream()
                .filter(pull -> !last.contains(pull) && alike.matches(first, pull))
                .toList();
        return last.isEmpty() ? Optional.empty() : Optional.of(new BeforeAndAfter(result, shown, start, last));
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

    /** The first that counts. */
    MeasuredPull first() {
        return start.get(0);
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
                "Before: " + numbers(start) + ". After: " + numbers(same)
                        + ". Corrected figures; the change of the average with its 90 % interval from pull to pull",
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

    private static String numbers(List<MeasuredPull> pulls) {
        return pulls.stream()
                .map(pull -> String.valueOf(pull.number()))
                .collect(Collectors.joining(", ", pulls.size() == 1 ? "pull " : "pulls ", ""));
    }

    /** An average, or a peak with its speed. */
    private record Figure(double si, OptionalDouble rpm) {
        String speed() {
            return rpm.isPresent() ? Shown.fixed(rpm.getAsDouble(), 0) : "";
        }
    }

    /** The peaks are those of the first and of the last pull; the averages are those of all pulls with the setting. */
    private Section.Grid row(
            Section.Grid grid,
            String name,
            Function<Figures, Optional<Figure>> figure,
            Function<Double, String> number) {
        Optional<Figure> first = first().figures().flatMap(figure);
        Optional<Figure> proof = last().figures().flatMap(figure);
        if (first.isEmpty() || proof.isEmpty()) {
            return grid;
        }
        boolean isAverage = proof.get().rpm().isEmpty();
        double before = isAverage ? average(start, figure) : first.get().si();
        double after = isAverage ? average(same, figure) : proof.get().si();
        return grid.row(
                name,
                number.apply(before),
                first.get().speed(),
                number.apply(after),
                proof.get().speed(),
                String.format(Locale.ROOT, "%+.1f %%", 100 * (after / before - 1)) + (isAverage ? interval() : ""));
    }

    private static double average(List<MeasuredPull> pulls, Function<Figures, Optional<Figure>> figure) {
        return pulls.stream()
                .flatMap(pull -> pull.figures().flatMap(figure).stream())
                .mapToDouble(Figure::si)
                .average()
                .orElseThrow();
    }

    private String interval() {
        return result.scatter()
                .map(known -> known.differencePercent(INTERVAL, start.size(), same.size()))
                .map(percent -> String.format(Locale.ROOT, " \u00b1 %.1f", percent))
                .orElse("");
    }
}
