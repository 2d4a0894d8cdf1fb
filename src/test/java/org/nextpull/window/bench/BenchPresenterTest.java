package org.nextpull.window.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.nextpull.advice.HoldNow;
import org.nextpull.chart.Point;
import org.nextpull.chart.SweepPlot;
import org.nextpull.report.ConditionText;
import org.nextpull.report.NextStep;
import org.nextpull.session.DayByPull;
import org.nextpull.session.OperatorAction;
import org.nextpull.session.OperatorActions;
import org.nextpull.unit.UnitSystem;
import org.nextpull.window.LiveMoments;
import org.nextpull.window.SampleDays;
import org.nextpull.window.day.DaySource;
import org.nextpull.window.day.Playback;
import org.nextpull.window.look.Tone;

/** The bench page in words and data, without a window: over the invented days that come with the project. */
class BenchPresenterTest {
    private static final DayByPull TIMING = DayByPull.of(SampleDays.input("hillclimb-e10-timing"));
    private static final DayByPull KNOCK = DayByPull.of(SampleDays.input("hillclimb-knock"));

    private static BenchPage page(DayByPull day, int pulls, UnitSystem units) {
        Playback playback = new Playback(pulls, day.pulls(), 4, true, 0);
        return new BenchPresenter(units)
                .page(new DaySource.Moment("day.csv", day.after(pulls), Optional.of(playback), Optional.empty()));
    }

    private static BenchPage page(DayByPull day, int pulls) {
        return page(day, pulls, UnitSystem.METRIC);
    }

    @Test
    void thePageGrowsPullByPull() {
        for (int pulls = 0; pulls <= TIMING.pulls(); pulls++) {
            BenchPage page = page(TIMING, pulls);
            assertThat(page.cards()).hasSize(pulls);
            int drawn = page.sweep().map(plot -> plot.points().size()).orElse(0);
            assertThat(drawn).as("points after pull %s", pulls).isEqualTo(pulls);
            assertThat(page.speed().isPresent()).isEqualTo(pulls > 0);
            assertThat(page.lead().spoken()).isNotBlank();
        }
    }

    @Test
    void theNextSettingStandsInTheLeadInTheStripAndInTheChart() {
        BenchPage page = page(TIMING, 3);
        String next = page.lead().figures().get(0).number();
        assertThat(page.next().orElse("")).startsWith(next);
        assertThat(page.sweep().orElseThrow().lines())
                .contains(new SweepPlot.Line(SweepPlot.Line.Kind.NEXT, Double.parseDouble(next)));
    }

    @Test
    void aStopHasNoNextPull() {
        BenchPage page = page(TIMING, TIMING.pulls());
        assertThat(page.lead().kind()).isEqualTo(NextStep.Kind.DONE);
        assertThat(page.next()).isEmpty();
        assertThat(page.sweep().map(SweepPlot::lines).orElse(List.of()))
                .noneMatch(line -> line.kind() == SweepPlot.Line.Kind.NEXT);
    }

    @Test
    void aReplayIsNeverTakenForARunningDay() {
        BenchPage page = page(TIMING, 2);
        assertThat(page.link().sentence()).startsWith("Replay, not live: day.csv, after pull 2 of ");
        assertThat(page.recording().sentence()).contains("nothing is recorded");
    }

    @Test
    void cardsSayResponseChangeAndWhatWasFound() {
        BenchPage page = page(TIMING, 4);
        assertThat(page.cards().get(0).change()).isEqualTo("baseline");
        BenchPage.PullCard last = page.cards().get(3);
        assertThat(last.response()).matches("\\d{3}\\.\\d N·m");
        double first = Double.parseDouble(page.cards().get(0).response().split(" ", -1)[0]);
        double fourth = Double.parseDouble(last.response().split(" ", -1)[0]);
        double change = Double.parseDouble(last.change().replace(" %", ""));
        assertThat(change)
                .as("against the first pull, within the rounding of both")
                .isCloseTo(100 * (fourth / first - 1), org.assertj.core.data.Offset.offset(0.07));
        assertThat(last.spoken()).startsWith("Pull 4, ").contains(last.response(), last.change());
    }

    @Test
    void unitsChangeWhatIsReadAndNotWhatIsAdvised() {
        BenchPage metric = page(TIMING, 5);
        BenchPage us = page(TIMING, 5, UnitSystem.US);
        assertThat(us.lead().figures()).isEqualTo(metric.lead().figures());
        assertThat(us.cards().get(0).response()).endsWith(" lb-ft");
        assertThat(us.conditions().get(0).value()).endsWith(" °F");
        assertThat(us.sweep().orElseThrow().yTitle()).contains("lb-ft");
        double ratio = y(metric.sweep()) / y(us.sweep());
        assertThat(ratio)
                .as("1 lbf.ft in N.m, NIST SP 811 table B.8")
                .isCloseTo(1.355818, org.assertj.core.data.Offset.offset(1e-6));
    }

    private static double y(Optional<SweepPlot> plot) {
        return plot.map(SweepPlot::points)
                .map(points -> points.get(0))
                .map(Point::y)
                .orElseThrow();
    }

    @Test
    void knockIsSaidAloudOnItsCardAndAsTheAlarmThatSounded() {
        List<Integer> knocked = new ArrayList<>();
        for (int pulls = 1; pulls <= KNOCK.pulls(); pulls++) {
            BenchPage page = page(KNOCK, pulls);
            BenchPage.PullCard last = page.cards().get(pulls - 1);
            if (last.mark().contains("knock")) {
                knocked.add(pulls);
                assertThat(last.tone()).isEqualTo(Tone.BAD);
                assertThat(page.urgent()).isNotEmpty();
                assertThat(page.urgent().get(0).sentence()).startsWith("Pull " + last.number() + ", alarm: knock");
            }
        }
        assertThat(knocked).as("the sample day meets knock").isNotEmpty();
    }

    @Test
    void conditionsOfTheLastPullAreInTheirWindowOrHowFarOff() {
        assertThat(page(TIMING, 0).conditions())
                .extracting(ConditionText.Line::place)
                .containsOnly(ConditionText.Line.Place.UNKNOWN);
        assertThat(page(TIMING, 1).conditions())
                .filteredOn(line -> !line.window().equals("not asked for"))
                .isNotEmpty()
                .allMatch(line -> line.place() != ConditionText.Line.Place.UNKNOWN);
    }

    @Test
    void anExcludedPullIsCrossedOutWithItsReason() {
        DayByPull struck = TIMING.with(OperatorActions.of(List.of(new OperatorAction.Strike(2, "throttle slipped")))
                .applied(TIMING.input()));
        BenchPage.PullCard card = page(struck, 4).cards().get(1);
        assertThat(card.mark()).isEqualTo("excluded");
        assertThat(card.tone()).isEqualTo(Tone.PLAIN);
        assertThat(card.remarks())
                .contains(new BenchPage.Remark(Tone.PLAIN, "Excluded by the operator: throttle slipped"));
    }

    @Test
    void aNoteIsShownWithItsPull() {
        DayByPull noted =
                TIMING.with(OperatorActions.of(List.of(new OperatorAction.Note(OptionalInt.of(1), "new plugs")))
                        .applied(TIMING.input()));
        assertThat(page(noted, 1).cards().get(0).remarks())
                .contains(new BenchPage.Remark(Tone.PLAIN, "Note: new plugs"));
    }

    @Test
    void theDaySaysItsAnswerAndEachFindingOnce() {
        List<String> day = page(TIMING, TIMING.pulls()).day().stream()
                .map(BenchPage.Remark::sentence)
                .toList();
        assertThat(day).anyMatch(sentence -> sentence.startsWith("Spark sweep, "));
        assertThat(day).anyMatch(sentence -> sentence.startsWith("Repeatability "));
        assertThat(day).doesNotHaveDuplicates();
    }

    @Test
    void onceBothWereSweptBothResponsesAreShown() {
        DayByPull both = DayByPull.of(SampleDays.input("hillclimb-e10-day"));
        BenchPage page = page(both, both.pulls());
        assertThat(page.sweep()).isPresent();
        assertThat(page.other()).isPresent();
        assertThat(page.other().get().title()).isNotEqualTo(page.sweep().get().title());
    }

    @Test
    void aHeldSpeedThatIsGuidedComesFirst() {
        HoldNow set = new HoldNow(
                HoldNow.Step.SET, 1, 3, 3750, OptionalDouble.of(22.5), OptionalDouble.of(31.4), 1, Optional.empty());
        BenchPage page = new BenchPresenter(UnitSystem.METRIC).page(LiveMoments.moment(LiveMoments.holding(set, true)));
        assertThat(page.lead().spoken())
                .startsWith("Set, spark advance 22.5 deg, held speed 3750 rpm. Set 22.5 deg at 3750 rpm. 31 s left");
        assertThat(page.pull().orElseThrow().figures().get(0).figure())
                .isEqualTo(new NextStep.Figure("22.5", "deg", "spark advance: set", "31 s left at load"));
        assertThat(page.pull().orElseThrow().figures().get(1).figure().change()).isEqualTo("hold 3750");
        HoldNow done = new HoldNow(
                HoldNow.Step.CLOSE_DONE,
                1,
                3,
                3750,
                OptionalDouble.of(22.5),
                OptionalDouble.of(9),
                6,
                Optional.empty());
        BenchPage closing =
                new BenchPresenter(UnitSystem.METRIC).page(LiveMoments.moment(LiveMoments.holding(done, true)));
        assertThat(closing.lead().word()).isEqualTo("close throttle");
        assertThat(closing.pull().orElseThrow().figures().get(0).figure().number())
                .isEqualTo("CLOSE");
    }

    @Test
    void whileTheEngineCoolsDownTheStepIsToWaitWithTheTimeLeft() {
        BenchPresenter presenter = new BenchPresenter(UnitSystem.METRIC);
        NextStep set =
                presenter.page(LiveMoments.moment(LiveMoments.between(2, 120))).lead();
        NextStep wait =
                presenter.page(LiveMoments.moment(LiveMoments.cooling(2, 41.2))).lead();
        assertThat(set.word()).isEqualTo("Set");
        assertThat(wait.kind()).isEqualTo(NextStep.Kind.WAIT);
        assertThat(wait.word()).isEqualTo("Wait 42 s");
        assertThat(wait.about()).isEqualTo("then set for pull 3");
        assertThat(wait.figures()).as("what comes then").isEqualTo(set.figures());
        NextStep done =
                presenter.page(LiveMoments.moment(LiveMoments.cooling(6, 41.2))).lead();
        assertThat(done.kind()).as("a day that is done waits for nothing").isEqualTo(NextStep.Kind.DONE);
    }
}
