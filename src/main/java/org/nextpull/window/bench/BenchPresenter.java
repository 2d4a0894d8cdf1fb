package org.nextpull.window.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.advice.Action;
import org.nextpull.advice.Advice;
import org.nextpull.advice.PresentConditions;
import org.nextpull.advice.Reason;
import org.nextpull.advice.Verdict;
import org.nextpull.alarm.Alarm;
import org.nextpull.channel.EngineSetting;
import org.nextpull.chart.MapPlot;
import org.nextpull.chart.SpeedPlots;
import org.nextpull.chart.SweepPlot;
import org.nextpull.chart.SweepPlots;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.fuel.Fuel;
import org.nextpull.live.LiveState;
import org.nextpull.report.AdviceText;
import org.nextpull.report.AlarmText;
import org.nextpull.report.AnswerText;
import org.nextpull.report.ConditionText;
import org.nextpull.report.FindingLines;
import org.nextpull.report.FindingText;
import org.nextpull.report.HoldText;
import org.nextpull.report.LinkText;
import org.nextpull.report.NextStep;
import org.nextpull.report.NextStepText;
import org.nextpull.report.Shown;
import org.nextpull.response.Conditions;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.UnitSystem;
import org.nextpull.window.day.DaySource;
import org.nextpull.window.look.Tone;

/** Turns a moment of a day into the bench page. Knows no view and no thread. */
public final class BenchPresenter {
    /** Where a change-over is confirmed. */
    private static final String CONFIRM = "Tick its steps on the page Candidates.";

    private final Shown shown;
    private final AnswerText answers;
    private final FindingText sentences;

    public BenchPresenter(UnitSystem units) {
        this.shown = new Shown(units);
        this.answers = new AnswerText(shown);
        this.sentences = FindingText.in(shown);
    }

    /** The page of that moment. */
    public BenchPage page(DaySource.Moment moment) {
        SessionResult result = moment.result();
        Optional<RunningState> running = moment.running().map(state -> new RunningState(state, shown, sentences));
        NextStep lead = moment.running()
                .flatMap(LiveState::hold)
                .flatMap(hold -> HoldText.step(hold, moment.coolDownS()))
                .orElseGet(() -> new NextStepText(shown).of(result, moment.coolDownS()));
        boolean confirms = moment.running().isPresent()
                && result.advice()
                        .filter(advice -> advice.reason() instanceof Reason.ChangeOver)
                        .isPresent();
        List<BenchPage.Remark> day =
                new ArrayList<>(running.map(RunningState::notices).orElse(List.of()));
        if (!lead.more().isEmpty()) {
            day.add(new BenchPage.Remark(Tone.PLAIN, lead.more()));
        }
        day.addAll(day(result));
        Optional<SweepPlot> sweep = SweepPlots.running(result, shown.units());
        return new BenchPage(
                heading(result),
                running.map(RunningState::link).orElseGet(() -> replayed(moment)),
                running.map(RunningState::recording).orElseGet(() -> pace(moment)),
                moment.running().flatMap(state -> new PullUnderway(state, shown).page()),
                running.map(RunningState::urgent).orElseGet(() -> wouldHaveSounded(result)),
                confirms ? lead.brief().with(CONFIRM) : lead.brief(),
                MapStrip.of(result),
                new ConditionText(shown)
                        .lines(
                                result.plan().start(),
                                running.map(RunningState::conditions).orElseGet(() -> conditions(result))),
                sweep,
                SweepPlots.of(result, shown.units()).stream()
                        .filter(plot -> sweep.filter(now -> !now.title().equals(plot.title()))
                                .isPresent())
                        .findFirst(),
                MapPlot.of(result),
                SpeedPlots.of(result, shown.units()),
                new PullCards(result, shown, sentences).cards(),
                result.advice().flatMap(Advice::setting).map(BenchPresenter::brief),
                day);
    }

    /** A card has no room for a map, which stands over the page. */
    private static String brief(EngineSetting setting) {
        String lambda = setting.lambda()
                .map(value -> ", lambda " + Shown.fixed(value.value(), 3))
                .orElse("");
        return setting.map().isPresent() ? "new map" + lambda : AdviceText.setting(setting);
    }

    private static String heading(SessionResult result) {
        List<String> parts = new ArrayList<>();
        parts.add(result.plan().engine().name().orElse("engine without a name"));
        result.plan().fuel().inTank().flatMap(Outcome::value).map(Fuel::name).ifPresent(parts::add);
        return String.join(", ", parts);
    }

    private static BenchPage.Remark replayed(DaySource.Moment moment) {
        return new BenchPage.Remark(
                Tone.PLAIN,
                moment.playback()
                        .map(playback -> LinkText.replayed(moment.source(), playback.shown(), playback.of()))
                        .orElse(moment.source()));
    }

    private static BenchPage.Remark pace(DaySource.Moment moment) {
        return new BenchPage.Remark(
                Tone.PLAIN,
                moment.playback()
                        .map(playback -> LinkText.pace(playback.paused(), playback.isAtEnd(), playback.secondsAPull()))
                        .orElse(""));
    }

    /** Over a day that is gone through again, an alarm is said as the one that sounded in the pull shown last. */
    private List<BenchPage.Remark> wouldHaveSounded(SessionResult result) {
        List<MeasuredPull.Curve> measured = result.measured();
        if (measured.isEmpty()) {
            return List.of();
        }
        MeasuredPull.Curve last = measured.get(measured.size() - 1);
        AlarmText alarms = new AlarmText(shown);
        List<BenchPage.Remark> urgent = new ArrayList<>();
        for (Alarm alarm : last.alarms()) {
            urgent.add(new BenchPage.Remark(Tone.BAD, alarms.inPull(last.pull().number(), alarm)));
        }
        return urgent;
    }

    private static PresentConditions conditions(SessionResult result) {
        if (result.measured().isEmpty()) {
            return PresentConditions.unknown();
        }
        Conditions last =
                result.measured().get(result.measured().size() - 1).pull().conditions();
        return new PresentConditions(last.coolant(), last.oil(), last.inletAir(), last.hottestExhaust());
    }

    private List<BenchPage.Remark> day(SessionResult result) {
        List<BenchPage.Remark> day = new ArrayList<>();
        result.verdict().ifPresent(verdict -> say(result, verdict, day));
        if (result.hasPulls()) {
            day.add(new BenchPage.Remark(Tone.PLAIN, answers.repeatability(result)));
        }
        day.addAll(found(result));
        return day;
    }

    private void say(SessionResult result, Verdict verdict, List<BenchPage.Remark> day) {
        if (verdict.advice().action() != Action.STOP) {
            AdviceText.stays(verdict).ifPresent(stays -> day.add(new BenchPage.Remark(Tone.PLAIN, stays)));
        }
        verdict.timing().ifPresent(answer -> day.add(new BenchPage.Remark(Tone.PLAIN, answers.timing(result, answer))));
        verdict.mixture().ifPresent(answer -> {
            day.add(new BenchPage.Remark(Tone.PLAIN, answers.mixture(answer)));
            String edges = answers.edges(result, answer);
            if (!edges.isEmpty()) {
                day.add(new BenchPage.Remark(Tone.PLAIN, "Mixture sweep: " + edges + "."));
            }
        });
    }

    /** What was found of the day, its logs and its pulls. Before the first pull nothing is missing yet. */
    private List<BenchPage.Remark> found(SessionResult result) {
        List<Finding> all = result.found().stream()
                .filter(finding -> result.hasPulls() || finding.code() != FindingCode.NO_PULL_TO_USE)
                .toList();
        return new FindingLines(sentences)
                .said(all).stream()
                        .map(line -> BenchPage.Remark.of(line.severity(), line.sentence()))
                        .toList();
    }
}
