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
import org.nextpull.scatter.Scatter;
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

    /**
     * Empty where nothing is chosen, or no clean pull beside the first was run with it; so it is where the day began at a held speed, whose
     * torque is not that of a pull over the band.
     */
    static Optional<BeforeAndAfter> of(SessionResult result, Shown shown) {
        List<MeasuredPull> used =
                result.pulls().stream().filter(MeasuredPull::isUsed).toList();
        Optional<Chosen> chosen = result.verdict().flatMap(Verdict::chosen);
        if (used.size() < 2 || chosen.isEmpty() || used.get(0).isHeld()) {
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

    /** Averages and peaks of the first setting and of the one that stays, each with its change. */
    Section.Grid grid() {
        String torque = shown.unit(Quantity.TORQUE).sign();
        String power = shown.unit(Quantity.POWER).sign();
        Section.Grid grid = Section.Grid.of(
                "Before: " + numbers(start) + ". After: " + numbers(same) + "."
                        + (start.size() + same.size() > 2
                                ? " Peaks: pulls " + first().number() + " and " + last().number() + "."
                                : "")
                        + " Corrected; change with its 90 % CI",
                "",
                "before",
                "at rpm",
                "after",
                "at rpm",
                "change");
        grid = row(grid, "average torque, " + torque, BeforeAndAfter::mean, shown::torque);
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

    /** What the average torque gains or loses on the first setting, a sentence; empty without torque or where no scatter is known. */
    Optional<String> gain() {
        Optional<Double> before = average(start);
        Optional<Double> after = average(same);
        Optional<Double> within = averageWithin();
        if (before.isEmpty() || after.isEmpty() || within.isEmpty()) {
            return Optional.empty();
        }
        double change = percent(before.get(), after.get());
        double low = change - within.get();
        double high = change + within.get();
        if (low > 0) {
            return Optional.of("Torque gain " + Shown.fixed(change, 1) + " % over the first setting (90 % CI "
                    + Shown.fixed(low, 1) + " to " + Shown.fixed(high, 1) + " %).");
        }
        if (high < 0) {
            return Optional.of("Torque loss " + Shown.fixed(-change, 1) + " % against the first setting (90 % CI "
                    + Shown.fixed(-high, 1) + " to " + Shown.fixed(-low, 1) + " %).");
        }
        return Optional.of("No torque gain or loss can be told against the first setting (" + signed(change)
                + " %, 90 % CI " + signed(low) + " to " + signed(high) + " %).");
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

    private static Optional<Figure> mean(Figures figures) {
        return figures.meanTorque().map(one -> new Figure(one.newtonMetres(), OptionalDouble.empty()));
    }

    /** The peaks are those of the first and of the last pull; the averages those of all pulls with the setting. */
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
        double before = isAverage ? average(start).orElseThrow() : first.get().si();
        double after = isAverage ? average(same).orElseThrow() : proof.get().si();
        Optional<Double> within = isAverage ? averageWithin() : peakWithin(figure);
        return grid.row(
                name,
                number.apply(before),
                first.get().speed(),
                number.apply(after),
                proof.get().speed(),
                signed(percent(before, after)) + " %"
                        + within.map(half -> " \u00b1 " + Shown.fixed(half, 1)).orElse(""));
    }

    private static double percent(double before, double after) {
        return 100 * (after / before - 1);
    }

    private static String signed(double percent) {
        return String.format(Locale.ROOT, "%+.1f", percent);
    }

    private static Optional<Double> average(List<MeasuredPull> pulls) {
        OptionalDouble mean = pulls.stream()
                .flatMap(pull -> pull.figures().flatMap(BeforeAndAfter::mean).stream())
                .mapToDouble(Figure::si)
                .average();
        return mean.isPresent() ? Optional.of(mean.getAsDouble()) : Optional.empty();
    }

    /** Half the interval of the change of the average, in percent. */
    private Optional<Double> averageWithin() {
        return result.scatter().map(known -> known.differencePercent(INTERVAL, start.size(), same.size()));
    }

    /**
     * Half the interval of the change of a peak of one pull each, in percent: a peak scatters as the average does, and about it as the ratios
     * of the two show over all pulls. Where the sweep bends the curve, that is in their scatter too, so the interval is rather too wide.
     */
    private Optional<Double> peakWithin(Function<Figures, Optional<Figure>> peak) {
        List<Double> ratios = result.pulls().stream()
                .filter(MeasuredPull::isUsed)
                .flatMap(pull -> pull.figures().stream())
                .flatMap(figures -> peak.apply(figures).stream()
                        .flatMap(one -> mean(figures).map(mean -> one.si() / mean.si()).stream()))
                .toList();
        return result.scatter()
                .flatMap(known -> Scatter.of(ratios)
                        .map(about -> Math.hypot(
                                known.differencePercent(INTERVAL, 1, 1), about.differencePercent(INTERVAL, 1, 1))));
    }
}
