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
import org.nextpull.plan.EngineFacts;
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
    private static final int CHART_WIDTH = 760;
    private static final int LEAST_HEIGHT = 240;
    private static final int MOST_HEIGHT = 600;

    /** What a page between A4 and Letter has for text and chart, heading and signature taken off, in pixels of the chart. */
    private static final int ROOM = 820;

    private static final int LINE_HEIGHT = 22;
    private static final int LETTERS_OF_FACT = 40;
    private static final int LETTERS_OF_ANSWER = 55;
    private static final int LETTERS_OF_REMARK = 95;
    /** Caption, headings and margins of a table, in lines. */
    private static final int HEAD_LINES = 3;

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
     * @param why what decided it
     * @param remarks what must be known with it
     * @param grids before and after, and the map
     * @param figures the chart
     */
    record Front(
            List<Section.Fact> who,
            List<String> answer,
            List<String> why,
            List<String> remarks,
            List<Section.Grid> grids,
            List<Section.Figure> figures) {}

    Front front() {
        Optional<BeforeAndAfter> ends = BeforeAndAfter.of(result, shown);
        List<Section.Fact> who = who();
        List<String> answer = answer(ends);
        List<String> why = why();
        List<String> remarks = remarks();
        List<Section.Grid> grids = candidates.map(CandidatePart::grids).orElseGet(() -> grids(ends));
        double lines = 0.6 * lines(who.stream().map(Section.Fact::value).toList(), LETTERS_OF_FACT)
                + 1.5 * lines(answer, LETTERS_OF_ANSWER)
                + 1.3 * (lines(why, LETTERS_OF_REMARK) + lines(remarks, LETTERS_OF_REMARK))
                + grids.stream()
                        .mapToInt(grid -> grid.rows().size() + HEAD_LINES)
                        .sum();
        ChartSize size = size(lines);
        List<Section.Figure> figures = comparison
                .overlay(size)
                .map(List::of)
                .orElseGet(() -> chart(ends, size).stream().toList());
        return new Front(who, answer, why, remarks, grids, figures);
    }

    private static int lines(List<String> texts, int letters) {
        return texts.stream().mapToInt(text -> 1 + text.length() / letters).sum();
    }

    /** The chart takes what the text leaves; the page gives it no more, so that a text longer than thought makes it smaller. */
    private static ChartSize size(double lines) {
        int height = (int) Math.round(ROOM - LINE_HEIGHT * lines);
        return new ChartSize(CHART_WIDTH, Math.max(LEAST_HEIGHT, Math.min(MOST_HEIGHT, height)), 2);
    }

    private List<Section.Grid> grids(Optional<BeforeAndAfter> ends) {
        List<Section.Grid> grids = new ArrayList<>(comparison.summary().stream().toList());
        ends.map(BeforeAndAfter::grid).ifPresent(grids::add);
        result.verdict()
                .flatMap(Verdict::chosen)
                .flatMap(chosen -> chosen.setting().map())
                .map(map -> map("Final map", map))
                .ifPresent(grids::add);
        return grids;
    }

    private List<Section.Fact> who() {
        SweepPlan plan = result.plan();
        List<Section.Fact> facts = new ArrayList<>();
        add(facts, "customer", plan.sheet().customer());
        add(facts, "vehicle", plan.sheet().vehicle());
        add(facts, "engine", Optional.of(engine(plan.engine())));
        add(facts, "fuel", plan.fuel().inTank().flatMap(tank -> tank.value().map(Fuel::name)));
        add(
                facts,
                "dyno",
                Optional.of(JobPart.words(plan.dyno().kind()) + ", torque at the "
                        + JobPart.words(plan.dyno().torqueAt().name())));
        add(facts, "corrected to", Optional.of(plan.air().standard().title()));
        add(facts, "weather", weather());
        add(facts, "place", plan.sheet().place());
        add(facts, "operator", plan.sheet().operator());
        add(facts, "reference", plan.sheet().reference());
        return facts;
    }

    private String engine(EngineFacts engine) {
        List<String> parts = new ArrayList<>(engine.name().stream().toList());
        engine.displacementM3().stream().mapToObj(shown::displacement).forEach(parts::add);
        engine.cylinders().stream().mapToObj(count -> count + " cylinders").forEach(parts::add);
        return parts.isEmpty() ? "not named" : String.join(", ", parts);
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

    private List<String> answer(Optional<BeforeAndAfter> ends) {
        if (candidates.isPresent()) {
            return List.of(candidates.get().answer().orElse("Not yet decided between the candidates."));
        }
        List<String> answer = new ArrayList<>(comparison.verdicts());
        result.verdict()
                .flatMap(verdict -> verdict.chosen().map(chosen -> AdviceText.kept(verdict, chosen)))
                .map(kept -> kept
                        + ends.flatMap(BeforeAndAfter::gain)
                                .map(gain -> " " + gain)
                                .orElse(""))
                .ifPresent(answer::add);
        if (answer.isEmpty()) {
            answer.add(
                    used().findAny().isPresent()
                            ? "No setting is advised: the plan sweeps neither spark nor mixture, or a finding below says what is missing."
                            : "No pull could be used, so there is no answer.");
        }
        return answer;
    }

    /** What decided the setting, with what a customer may not have heard of. */
    private List<String> why() {
        return candidates.isPresent()
                ? List.of()
                : result.verdict().flatMap(Verdict::chosen).map(AdviceText::by).stream()
                        .map(by -> by.contains("MBT")
                                ? by + " MBT is the least spark advance that makes best torque."
                                : by)
                        .toList();
    }

    private List<String> remarks() {
        List<String> remarks =
                new ArrayList<>(candidates.map(CandidatePart::remarks).orElse(List.of()));
        WatchText.of(result)
                .filter(unwatched -> result.verdict().flatMap(Verdict::chosen).isPresent())
                .ifPresent(remarks::add);
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
