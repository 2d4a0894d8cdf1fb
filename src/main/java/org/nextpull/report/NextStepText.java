package org.nextpull.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.nextpull.advice.Action;
import org.nextpull.advice.Advice;
import org.nextpull.advice.Chosen;
import org.nextpull.advice.MapState;
import org.nextpull.advice.Reason;
import org.nextpull.advice.Verdict;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.SparkMap;
import org.nextpull.plan.SweepPlan;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/** Puts the next step into large print. */
public final class NextStepText {
    private static final String LISTEN = "Knock is not measured: listen, and mark it (K).";

    /** How a change of a setting is called to either side, its decimal places, and the least that is one. */
    private record Sides(int places, String above, String below, double least) {}

    private final AdviceText words;

    public NextStepText(Shown shown) {
        this.words = new AdviceText(shown);
    }

    /** The next step of a day as it stands. */
    public NextStep of(SessionResult result) {
        return of(result, OptionalDouble.empty());
    }

    /**
     * The next step of a running day.
     *
     * @param coolDownS what is left of the plan's time between pulls, in s; until it is over the step is to wait
     */
    public NextStep of(SessionResult result, OptionalDouble coolDownS) {
        NextStep step = result.verdict().map(verdict -> of(result, verdict)).orElseGet(() -> nothing(result));
        boolean pulls = step.kind() == NextStep.Kind.PULL || step.kind() == NextStep.Kind.REPEAT;
        return coolDownS.isEmpty() || !pulls
                ? step
                : new NextStep(
                        NextStep.Kind.WAIT,
                        "Wait " + Shown.fixed(Math.ceil(coolDownS.getAsDouble()), 0) + " s",
                        step.figures(),
                        "then " + step.word().toLowerCase(Locale.ROOT) + " " + step.about(),
                        step.because(),
                        step.listen(),
                        step.whole());
    }

    private static NextStep nothing(SessionResult result) {
        boolean sweeps =
                result.plan().timing().isPresent() || result.plan().mixture().isPresent();
        String why = sweeps
                ? "What was found in the log leaves no setting to advise; see the warnings."
                : "Comparison plan: run its labels A-B-B-A, then compare.";
        return new NextStep(
                NextStep.Kind.NOTHING, sweeps ? "No advice" : "No sweep", List.of(), "", why, Optional.empty(), why);
    }

    private NextStep of(SessionResult result, Verdict verdict) {
        Advice advice = verdict.advice();
        boolean stops = advice.action() == Action.STOP;
        Optional<EngineSetting> last = stops ? Optional.empty() : last(result.pulls());
        Optional<EngineSetting> setting =
                advice.action() == Action.STOP ? advice.leave().map(Chosen::setting) : advice.setting();
        return new NextStep(
                kind(advice),
                word(advice),
                setting.map(wanted -> figures(wanted, verdict.map().map(MapState::last), last, result.plan()))
                        .orElse(List.of()),
                about(advice, result),
                stops ? ended(result, advice) : knocked(result) + words.brief(advice),
                listen(result, advice),
                words.because(advice));
    }

    /** What the last pull heard turns the sweep round: the reason must not pass over it. */
    private static String knocked(SessionResult result) {
        return result.hasPulls()
                        && result.pulls().get(result.pulls().size() - 1).knock().isHeard()
                ? heard(result)
                : "";
    }

    /** At a stop knock comes first. */
    private static String heard(SessionResult result) {
        return KnockText.pulls(result).map(sentence -> sentence + " ").orElse("");
    }

    private static Optional<EngineSetting> last(List<MeasuredPull> pulls) {
        return pulls.isEmpty()
                ? Optional.empty()
                : Optional.of(pulls.get(pulls.size() - 1).setting());
    }

    private static NextStep.Kind kind(Advice advice) {
        if (changeOver(advice).isPresent()) {
            return NextStep.Kind.WAIT;
        }
        return switch (advice.action()) {
            case PULL -> NextStep.Kind.PULL;
            case REPEAT -> NextStep.Kind.REPEAT;
            case WAIT -> NextStep.Kind.WAIT;
            case STOP -> AdviceText.isDone(advice) ? NextStep.Kind.DONE : NextStep.Kind.STOP;
        };
    }

    /** What is to be fitted before the next setting is any use. */
    private static Optional<Reason.ChangeOver> changeOver(Advice advice) {
        return advice.action() != Action.STOP && advice.reason() instanceof Reason.ChangeOver to
                ? Optional.of(to)
                : Optional.empty();
    }

    private static String word(Advice advice) {
        if (changeOver(advice).isPresent()) {
            return "Change over";
        }
        return switch (advice.action()) {
            case PULL -> "Set";
            case REPEAT -> "Repeat";
            case WAIT -> "Wait";
            case STOP -> AdviceText.isDone(advice) ? "Done" : "Stop";
        };
    }

    private static String about(Advice advice, SessionResult result) {
        int next = result.pulls().size() + 1;
        return switch (advice.action()) {
            case PULL, REPEAT ->
                changeOver(advice).map(to -> "to \"" + to.label() + "\"").orElse("for pull " + next + fitted(result));
            case WAIT -> "then set for pull " + next + fitted(result);
            case STOP ->
                advice.reason() instanceof Reason.Decided end
                        ? "\"" + end.best() + "\", final setting"
                        : advice.leave().isPresent() ? "final setting" : AdviceText.NOTHING_TO_LEAVE;
        };
    }

    /** On a day of candidates, which of them is fitted. */
    private static String fitted(SessionResult result) {
        return last(result.pulls())
                .filter(pull -> result.plan().decides())
                .flatMap(EngineSetting::label)
                .map(label -> ", \"" + label + "\"")
                .orElse("");
    }

    /** What decided the setting that is left, and why it ends; which candidate is best comes before both, and the knock of others says nothing of it. */
    private String ended(SessionResult result, Advice advice) {
        String why = words.brief(advice);
        Optional<String> by = advice.leave().map(AdviceText::by);
        return advice.reason() instanceof Reason.Decided
                ? why + by.map(sentence -> " " + sentence).orElse("")
                : heard(result) + by.map(sentence -> sentence + " ").orElse("") + why;
    }

    /** What nothing watches, and that the operator must listen. */
    private static Optional<String> listen(SessionResult result, Advice advice) {
        String said = Stream.of(WatchText.of(result), listens(advice) ? Optional.of(LISTEN) : Optional.<String>empty())
                .flatMap(Optional::stream)
                .collect(Collectors.joining(" "));
        return said.isEmpty() ? Optional.empty() : Optional.of(said);
    }

    private static boolean listens(Advice advice) {
        return advice.reason() instanceof Reason.Searching searching && searching.listen();
    }

    private static List<NextStep.Figure> figures(
            EngineSetting wanted, Optional<SparkMap> set, Optional<EngineSetting> last, SweepPlan plan) {
        Sides spark = new Sides(
                1,
                "+",
                "-",
                plan.timing().map(timing -> timing.step().resolution()).orElse(0.0));
        Sides mixture = new Sides(
                3,
                "leaner",
                "richer",
                plan.mixture().map(found -> found.step().resolution()).orElse(0.0));
        List<NextStep.Figure> figures = new ArrayList<>();
        wanted.advance()
                .map(Advance::deg)
                .ifPresent(deg -> figures.add(new NextStep.Figure(
                        Shown.fixed(deg, 1),
                        "deg",
                        "spark advance",
                        change(deg, last.flatMap(EngineSetting::advance).map(Advance::deg), spark))));
        wanted.map()
                .flatMap(map -> set.flatMap(before -> MapText.shiftDeg(map, before)))
                .ifPresent(by -> figures.add(new NextStep.Figure(by, "deg", "on the whole map", "")));
        wanted.offset()
                .map(Advance::deg)
                .ifPresent(deg -> figures.add(new NextStep.Figure(
                        AdviceText.signed(deg),
                        "deg",
                        "on the present map",
                        change(deg, last.flatMap(EngineSetting::offset).map(Advance::deg), spark))));
        wanted.lambda()
                .map(Lambda::value)
                .ifPresent(lambda -> figures.add(new NextStep.Figure(
                        Shown.fixed(lambda, 3),
                        "",
                        "lambda",
                        change(lambda, last.flatMap(EngineSetting::lambda).map(Lambda::value), mixture))));
        return figures;
    }

    private static String change(double wanted, Optional<Double> was, Sides sides) {
        if (was.isEmpty()) {
            return "";
        }
        double by = wanted - was.get();
        String number = Shown.fixed(Math.abs(by), sides.places());
        if (Double.parseDouble(number) == 0 || Math.abs(by) < sides.least() - 1e-9) {
            return "no change";
        }
        String side = by > 0 ? sides.above() : sides.below();
        return side.length() == 1 ? side + number : number + " " + side;
    }
}
