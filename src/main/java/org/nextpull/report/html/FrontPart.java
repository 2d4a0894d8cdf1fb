package org.nextpull.report.html;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.nextpull.advice.Action;
import org.nextpull.advice.Verdict;
import org.nextpull.air.AirState;
import org.nextpull.channel.SparkMap;
import org.nextpull.chart.ChartSize;
import org.nextpull.chart.SpeedPlots;
import org.nextpull.fuel.Fuel;
import org.nextpull.plan.SweepPlan;
import org.nextpull.report.AdviceText;
import org.nextpull.report.KnockText;
import org.nextpull.report.Shown;
import org.nextpull.report.WatchText;
import org.nextpull.response.MeasuredPull;
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

    Front front() {
        Optional<BeforeAndAfter> ends = BeforeAndAfter.of(result, shown);
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

    private List<Section.Grid> grids(Optional<BeforeAndAfter> ends) {
        List<Section.Grid> grids = new ArrayList<>(comparison.summary().stream().toList());
        ends.map(BeforeAndAfter::grid).ifPresent(grids::add);
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

    private Stream<MeasuredPull> used() {
        return result.pulls().stream().filter(MeasuredPull::isUsed);
    }

    private Optional<Section.Figure> chart(Optional<BeforeAndAfter> ends, ChartSize size) {
        return ends.flatMap(both -> SpeedPlots.beforeAndAfter(
                        result, both.first().number(), both.last().number(), shown.units()))
                .or(() -> SpeedPlots.of(result, shown.units()))
                .map(plot -> Section.Figure.of(
                        "Corrected torque and power",
                        plot,
                        size,
                        "Chart of corrected torque and power over speed. Its numbers are in the table below.",
                        ChartsPart.numbers(plot, result.plan().band())));
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
