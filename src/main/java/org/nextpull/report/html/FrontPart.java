package org.nextpull.report.html;

import java.util.ArrayList;
import java.util.Base64;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.nextpull.advice.Action;
import org.nextpull.advice.Chosen;
import org.nextpull.advice.Verdict;
import org.nextpull.air.AirState;
import org.nextpull.channel.SparkMap;
import org.nextpull.chart.ChartLook;
import org.nextpull.chart.ChartSize;
import org.nextpull.chart.Charts;
import org.nextpull.chart.SpeedPlots;
import org.nextpull.fuel.Fuel;
import org.nextpull.plan.SweepPlan;
import org.nextpull.report.AdviceText;
import org.nextpull.report.KnockText;
import org.nextpull.report.Shown;
import org.nextpull.report.WatchText;
import org.nextpull.response.Figures;
import org.nextpull.response.MeasuredPull;
import org.nextpull.scatter.Scatter;
import org.nextpull.session.Session;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.Quantity;

/**
 * The first page, for whoever pays for the day: who and what, the result in a sentence, what it was before and what it is after, one
 * chart and the map. What another shop needs to check it follows from the second page on.
 */
final class FrontPart {
    /** Of the one chart, which leaves room for the tables. */
    private static final ChartSize SIZE = new ChartSize(760, 430, 2);
    /** So many remarks and rows leave the chart its full height on one page of Letter. */
    private static final int LINES_BESIDE_CHART = 9;

    private static final int LINE_HEIGHT = 33;
    private static final int LEAST_HEIGHT = 240;
    /** Caption and headings of a table. */
    private static final int HEAD_LINES = 2;

    private static final double INTERVAL = 0.9;

    private final SessionResult result;
    private final ComparePart comparison;
    private final Shown shown;
    private final AdviceText words;
    private final Optional<CandidatePart> candidates;

    FrontPart(SessionResult result, ComparePart comparison, Shown shown) {
        this.result = result;
        this.comparison = comparison;
        this.shown = shown;
        this.words = new AdviceText(shown);
        candidates = CandidatePart.of(result, shown);
    }

    /**
     * The page.
     *
     * @param who names and values, the customer first
     * @param answer the result in a sentence or two
     * @param remarks what must be known with it
     * @param grids before and after, and the map
     * @param figures the chart
     */
    record Front(
            List<Section.Fact> who,
            List<String> answer,
            List<String> remarks,
            List<Section.Grid> grids,
            List<Section.Figure> figures) {}

    /** The pulls before and after: the first that counts, and those with the setting that stays. */
    private record Ends(MeasuredPull first, List<MeasuredPull> last) {
        MeasuredPull proof() {
            return last.get(last.size() - 1);
        }
    }

    Front front() {
        Optional<Ends> ends = ends();
        List<Section.Grid> grids = candidates.map(CandidatePart::grids).orElseGet(() -> grids(ends));
        List<String> remarks = remarks();
        ChartSize size = size(remarks, grids);
        List<Section.Figure> figures = comparison
                .overlay(size)
                .map(List::of)
                .orElseGet(() -> chart(ends, size).stream().toList());
        return new Front(who(), answer(), remarks, grids, figures);
    }

    /** The chart gives way where there is much to say: all of it is one page. */
    private static ChartSize size(List<String> remarks, List<Section.Grid> grids) {
        int lines = remarks.size()
                + grids.stream()
                        .mapToInt(grid -> grid.rows().size() + HEAD_LINES)
                        .sum();
        int over = Math.max(0, lines - LINES_BESIDE_CHART);
        return new ChartSize(SIZE.width(), Math.max(LEAST_HEIGHT, SIZE.height() - LINE_HEIGHT * over), SIZE.scale());
    }

    private List<Section.Grid> grids(Optional<Ends> ends) {
        List<Section.Grid> grids = new ArrayList<>(comparison.summary().stream().toList());
        ends.map(this::beforeAndAfter).ifPresent(grids::add);
        result.verdict()
                .flatMap(Verdict::chosen)
                .flatMap(chosen -> chosen.setting().map())
                .map(map -> map("The map that stays", map))
                .ifPresent(grids::add);
        return grids;
    }

    private List<Section.Fact> who() {
        SweepPlan plan = result.plan();
        List<Section.Fact> facts = new ArrayList<>();
        add(facts, "customer", plan.sheet().customer());
        add(facts, "vehicle", plan.sheet().vehicle());
        add(facts, "engine", plan.engine().name());
        add(facts, "fuel", plan.fuel().inTank().flatMap(tank -> tank.value().map(Fuel::name)));
        add(
                facts,
                "dyno",
                Optional.of(JobPart.words(plan.dyno().kind().name()) + ", torque at the "
                        + JobPart.words(plan.dyno().torqueAt().name())));
        add(facts, "corrected to", Optional.of(plan.air().standard().title()));
        add(facts, "weather", weather());
        add(facts, "place", plan.sheet().place());
        add(facts, "operator", plan.sheet().operator());
        add(facts, "reference", plan.sheet().reference());
        return facts;
    }

    private static void add(List<Section.Fact> facts, String name, Optional<String> value) {
        value.ifPresent(text -> facts.add(new Section.Fact(name, text)));
    }

    /** The air of the pulls that count, in one line. */
    private Optional<String> weather() {
        List<AirState> air =
                used().flatMap(pull -> pull.conditions().air().stream()).toList();
        return air.isEmpty()
                ? Optional.empty()
                : Optional.of(range(
                                air,
                                state -> shown.number(
                                        Quantity.TEMPERATURE,
                                        state.temperature().kelvins()))
                        + " " + shown.unit(Quantity.TEMPERATURE).sign() + ", "
                        + range(
                                air,
                                state -> shown.number(
                                        Quantity.PRESSURE, state.barometer().pascals()))
                        + " " + shown.unit(Quantity.PRESSURE).sign() + ", "
                        + range(air, state -> Shown.fixed(state.relativeHumidity() * 100, 0)) + " % RH");
    }

    private static String range(List<AirState> air, Function<AirState, String> figure) {
        Comparator<String> bySize = Comparator.comparingDouble(Double::parseDouble);
        List<String> ends = air.stream().map(figure).sorted(bySize).toList();
        String low = ends.get(0);
        String high = ends.get(ends.size() - 1);
        return low.equals(high) ? low : low + " to " + high;
    }

    private List<String> answer() {
        if (candidates.isPresent()) {
            return List.of(candidates.get().answer().orElse("Not yet decided between the candidates."));
        }
        List<String> answer = new ArrayList<>(comparison.verdicts());
        result.verdict().flatMap(AdviceText::stays).ifPresent(answer::add);
        if (answer.isEmpty()) {
            answer.add(
                    used().findAny().isPresent()
                            ? "No setting is advised: the plan sweeps nothing, or the remarks name what hinders it."
                            : "No pull could be used, so there is no answer.");
        }
        return answer;
    }

    private List<String> remarks() {
        List<String> remarks =
                new ArrayList<>(candidates.map(CandidatePart::remarks).orElse(List.of()));
        WatchText.of(result).ifPresent(remarks::add);
        result.verdict()
                .filter(verdict -> verdict.advice().action() == Action.STOP)
                .ifPresent(over -> remarks.addAll(KnockText.leading(result)));
        result.verdict()
                .filter(verdict -> verdict.advice().action() != Action.STOP)
                .ifPresent(open -> remarks.add("Not finished: " + words.headline(open.advice()) + "."));
        return remarks;
    }

    private java.util.stream.Stream<MeasuredPull> used() {
        return result.pulls().stream().filter(MeasuredPull::isUsed);
    }

    private Optional<Ends> ends() {
        List<MeasuredPull> used = used().toList();
        Optional<Chosen> chosen = result.verdict().flatMap(Verdict::chosen);
        if (used.size() < 2 || chosen.isEmpty()) {
            return Optional.empty();
        }
        MeasuredPull first = used.get(0);
        List<MeasuredPull> last = used.stream()
                .filter(pull ->
                        result.isClean(pull) && pull.number() != first.number() && hasSetting(pull, chosen.get()))
                .toList();
        return last.isEmpty() ? Optional.empty() : Optional.of(new Ends(first, last));
    }

    private boolean hasSetting(MeasuredPull pull, Chosen chosen) {
        if (chosen.setting().map().isPresent()) {
            // a map is proven by the last clean pull; those before it ran other maps
            return chosen.proof().standing() == Chosen.Standing.PROVEN
                    && used().filter(result::isClean)
                            .max(Comparator.comparingDouble(MeasuredPull::order))
                            .filter(proof -> proof.number() == pull.number())
                            .isPresent();
        }
        return Session.sameSetting(result.plan()).isRun(chosen.setting(), pull);
    }

    /** Averages and peaks of the first setting and of the one that stays, with the interval of the change of the average. */
    private Section.Grid beforeAndAfter(Ends ends) {
        String torque = shown.unit(Quantity.TORQUE).sign();
        String power = shown.unit(Quantity.POWER).sign();
        Section.Grid grid = Section.Grid.of(
                "Before: pull " + ends.first().number() + ". After: "
                        + ends.last().stream()
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
                ends,
                figures -> figures.meanTorque().map(one -> new Figure(one.newtonMetres(), OptionalDouble.empty())),
                shown::torque);
        grid = row(
                grid,
                "peak torque, " + torque,
                ends,
                figures -> figures.peakTorque()
                        .map(one -> new Figure(one.torque().newtonMetres(), OptionalDouble.of(one.rpm()))),
                shown::torque);
        return row(
                grid,
                "peak power, " + power,
                ends,
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
            Ends ends,
            Function<Figures, Optional<Figure>> figure,
            Function<Double, String> number) {
        Optional<Figure> before = ends.first().figures().flatMap(figure);
        Optional<Figure> after = ends.proof().figures().flatMap(figure);
        if (before.isEmpty() || after.isEmpty()) {
            return grid;
        }
        boolean isAverage = after.get().rpm().isEmpty();
        double last = isAverage
                ? ends.last().stream()
                        .flatMap(pull -> pull.figures().flatMap(figure).stream())
                        .mapToDouble(Figure::si)
                        .average()
                        .orElseThrow()
                : after.get().si();
        return grid.row(
                name,
                number.apply(before.get().si()),
                before.get().speed(),
                number.apply(last),
                after.get().speed(),
                change(before.get().si(), last, isAverage ? ends.last().size() : 0));
    }

    private String change(double before, double after, int pulls) {
        double percent = 100 * (after / before - 1);
        Optional<Scatter> scatter = pulls > 0 ? result.scatter() : Optional.empty();
        return String.format(Locale.ROOT, "%+.1f %%", percent)
                + scatter.map(known ->
                                String.format(Locale.ROOT, " \u00b1 %.1f", known.differencePercent(INTERVAL, 1, pulls)))
                        .orElse("");
    }

    private Optional<Section.Figure> chart(Optional<Ends> ends, ChartSize size) {
        return ends.flatMap(both -> SpeedPlots.beforeAndAfter(
                        result, both.first().number(), both.proof().number(), shown.units()))
                .or(() -> SpeedPlots.of(result, shown.units()))
                .map(plot -> new Section.Figure(
                        "Corrected torque and power",
                        "data:image/png;base64,"
                                + Base64.getEncoder().encodeToString(new Charts(size, ChartLook.light()).draw(plot)),
                        "Chart of corrected torque and power over speed. Its numbers are in the table below.",
                        size.width(),
                        size.height(),
                        PlotNumbers.of(plot, result.plan().band())));
    }

    /** A map in one line, which a tuner types off. */
    static Section.Grid map(String title, SparkMap map) {
        List<String> speeds = new ArrayList<>(List.of("rpm"));
        List<String> degrees = new ArrayList<>(List.of("deg"));
        for (SparkMap.Cell cell : map.cells()) {
            speeds.add(Shown.fixed(cell.rpm(), 0));
            degrees.add(Shown.fixed(cell.advance().deg(), 1));
        }
        return Section.Grid.of(title + ": advance in deg before top dead centre", speeds.toArray(new String[0]))
                .row(degrees.toArray(new String[0]));
    }
}
