package org.nextpull.session;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import org.nextpull.advice.Action;
import org.nextpull.advice.Advice;
import org.nextpull.advice.Advisor;
import org.nextpull.advice.Day;
import org.nextpull.advice.EarlierStop;
import org.nextpull.advice.SaidStops;
import org.nextpull.advice.Verdict;
import org.nextpull.alarm.AlarmWatch;
import org.nextpull.channel.Channel;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.Recording;
import org.nextpull.channel.SparkMap;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.fit.Experience;
import org.nextpull.plan.SweepPlan;
import org.nextpull.pull.Candidate;
import org.nextpull.pull.PullRules;
import org.nextpull.response.MeasuredPull;
import org.nextpull.response.Reading;
import org.nextpull.scatter.Repeatability;
import org.nextpull.scatter.SameSetting;

/** The chain: recordings to pulls, pulls to responses, responses to scatter, fit and advice. Live, replay and logs all run through it. */
public final class Session {
    private Session() {}

    /** The result of a day. */
    public static SessionResult evaluate(SessionInput input) {
        return evaluate(input, read(input));
    }

    /** The pulls in the recordings of a day; pulls thrown away at its start are counted over all of them. */
    public static List<SourcePulls> read(SessionInput input) {
        return read(input, List.of(), Long.MAX_VALUE, UnaryOperator.identity());
    }

    /**
     * The same for a later part of a day.
     *
     * @param before the logs of the day that were read before: pulls thrown away in them count
     * @param mostBytes how much the samples of one stretch at full load may fill
     * @param keeper gives each pull with its rows where they are to be kept
     */
    public static List<SourcePulls> read(
            SessionInput input, List<SourcePulls> before, long mostBytes, UnaryOperator<Candidate> keeper) {
        List<SourcePulls> sources = new ArrayList<>();
        PullRules usual = PullRules.of(input.plan());
        PullRules rules = usual.withThrowAwayFirst(usual.throwAwayFirst()
                - before.stream().mapToInt(SourcePulls::thrownAway).sum());
        AlarmWatch.Rules limits = AlarmWatch.Rules.of(input.plan());
        for (Recording recording : input.recordings()) {
            SourcePulls source = LogReading.read(recording, rules, limits, mostBytes, keeper);
            sources.add(source);
            rules = rules.withThrowAwayFirst(rules.throwAwayFirst() - source.thrownAway());
        }
        return sources;
    }

    /** The result of a day whose logs were read before. */
    public static SessionResult evaluate(SessionInput input, List<SourcePulls> sources) {
        return conclude(input, MeasuredDay.of(input, sources));
    }

    /** The same of a day that goes on, whose pulls are measured once. */
    public static SessionResult evaluate(SessionInput input, List<SourcePulls> sources, MeasureCache once) {
        MeasuredDay day = MeasuredDay.of(input, sources, once);
        return conclude(input, day, once.soFar(input, day.measured()));
    }

    /** The result of the pulls that were measured, by the chain's later part. */
    static SessionResult conclude(SessionInput input, MeasuredDay day) {
        return conclude(input, day, new DaySoFar());
    }

    /**
     * The same for one of several states of a day.
     *
     * @param soFar what is known from other states of it; grows
     */
    static SessionResult conclude(SessionInput input, MeasuredDay day, DaySoFar soFar) {
        List<SourcePulls> sources = day.sources();
        List<MeasuredPull.Curve> measured = heard(input, day.measured(), soFar);
        SweepPlan plan = input.plan();
        List<Finding> findings = new ArrayList<>(input.found());
        findings.addAll(day.found());
        List<MeasuredPull> pulls =
                measured.stream().map(MeasuredPull.Curve::pull).toList();
        Repeatability repeatability = repeatability(plan, pulls);
        List<MeasuredPull> fitted = soFar.fitted(plan, measured);
        Optional<Finding> hindrance = hindrance(input, fitted, soFar);
        hindrance.ifPresent(findings::add);
        Optional<CandidatePlanner.Answer> between = hindrance.isEmpty() && plan.decides()
                ? Optional.of(between(input, pulls, soFar.sweeps))
                : Optional.empty();
        Optional<Verdict> verdict = between.map(CandidatePlanner.Answer::verdict)
                .or(() -> hindrance.isPresent() ? Optional.empty() : verdict(input, fitted, soFar, Advisor::judge));
        if (!sweeps(plan) && !hasLabelsToCompare(pulls)) {
            findings.add(Finding.warning(FindingCode.NOTHING_TO_SWEEP, Place.nowhere()));
        }
        boolean areLogs = measured.stream().anyMatch(MeasuredPull.Curve::hasCurve);
        if (plan.band().isEmpty() && areLogs) {
            findings.add(Finding.warning(FindingCode.PLAN_WITHOUT_BAND, Place.nowhere()));
        }
        sources.forEach(source -> findings.addAll(unwatched(plan, source)));
        findings.addAll(KnockOfDay.findings(pulls));
        if (sweeps(plan)) {
            Reading.missing(pulls, plan.goal().response()).ifPresent(findings::add);
        }
        input.experience().map(Session::taught).ifPresent(findings::add);
        HeldSpeeds.provedBy(pulls).ifPresent(findings::add);
        findings.addAll(AirOfDay.findings(plan, pulls));
        return new SessionResult(
                plan,
                sources,
                input.tables(),
                measured,
                day.orderFrom(),
                repeatability,
                input.experience(),
                verdict,
                between.map(CandidatePlanner.Answer::day),
                input.amendments(),
                findings);
    }

    private static List<MeasuredPull.Curve> heard(
            SessionInput input, List<MeasuredPull.Curve> measured, DaySoFar soFar) {
        return soFar.heard(input.plan(), measured, before -> askedAfter(input, before));
    }

    private static Optional<Finding> hindrance(SessionInput input, List<MeasuredPull> fitted, DaySoFar soFar) {
        return sweeps(input.plan())
                ? Advisor.hindrance(dayOf(input, fitted, input.amendments().lifted()), soFar.stops)
                : Optional.empty();
    }

    /** The map that the pulls so far ask for; empty where they ask for none. */
    private static Optional<SparkMap> askedAfter(SessionInput input, List<MeasuredPull> before) {
        Day day = day(input, before, input.amendments().lifted());
        if (Advisor.hindrance(day).isPresent()) {
            return Optional.empty();
        }
        Verdict verdict =
                input.plan().decides() ? between(input, before, new HashMap<>()).verdict() : Advisor.judge(day);
        return verdict.advice().setting().flatMap(EngineSetting::spark);
    }

    /**
     * The verdict after the last pull of one of several states of a day.
     *
     * @param measured the pulls of the state
     * @param say what is asked of the day: its verdict, or of a stop that stands no more than its advice
     */
    static Optional<Verdict> said(
            SessionInput input,
            List<MeasuredPull.Curve> measured,
            DaySoFar soFar,
            BiFunction<Day, SaidStops, Verdict> say) {
        List<MeasuredPull.Curve> heard = heard(input, measured, soFar);
        List<MeasuredPull> fitted = soFar.fitted(input.plan(), heard);
        if (hindrance(input, fitted, soFar).isPresent()) {
            return Optional.empty();
        }
        return input.plan().decides()
                ? Optional.of(between(
                                input,
                                heard.stream().map(MeasuredPull.Curve::pull).toList(),
                                soFar.sweeps)
                        .verdict())
                : verdict(input, fitted, soFar, say);
    }

    /** The answer of the last day; the decision runs of those before count beside its own. */
    private static CandidatePlanner.Answer between(
            SessionInput input, List<MeasuredPull> pulls, Map<CandidatePlanner.Sweep, Verdict> judged) {
        int last = pulls.isEmpty() ? 0 : pulls.get(pulls.size() - 1).origin().day();
        List<MeasuredPull> today =
                pulls.stream().filter(pull -> pull.origin().day() == last).toList();
        List<MeasuredPull> before = pulls.subList(0, pulls.size() - today.size());
        SweepPlan plan = input.plan();
        return CandidatePlanner.of(
                plan,
                today,
                before.isEmpty()
                        ? List.of()
                        : between(input, before, judged).day().runs(),
                input.next().label(),
                (first, next) ->
                        day(input.withNext(next), first, input.amendments().lifted()),
                judged);
    }

    static boolean sweeps(SweepPlan plan) {
        return plan.timing().isPresent() || plan.mixture().isPresent();
    }

    private static Finding taught(Experience experience) {
        return Finding.note(FindingCode.EXPERIENCE_OF_ENGINE, Place.nowhere(), Detail.of("days", experience.days()));
    }

    private static List<Finding> unwatched(SweepPlan plan, SourcePulls source) {
        List<Channel> channels = source.description().stream()
                .flatMap(description -> description.columns().stream())
                .flatMap(column -> column.channel().stream())
                .toList();
        return AlarmWatch.unwatched(plan, channels, Place.inFile(source.name()));
    }

    /** When two pulls count as run with one setting: within half of what the plan can set, and a little. */
    public static SameSetting sameSetting(SweepPlan plan) {
        return new SameSetting(
                0.6 * plan.timing().map(timing -> timing.step().resolution()).orElse(0.5),
                0.6 * plan.mixture().map(mixture -> mixture.step().resolution()).orElse(0.005));
    }

    /** By pulls of one setting; plateaus at held speeds are not one figure a pull that repeats. */
    static Repeatability repeatability(SweepPlan plan, List<MeasuredPull> pulls) {
        List<MeasuredPull> sweeps =
                pulls.stream().filter(pull -> !pull.isHeld()).toList();
        return Repeatability.of(Reading.of(sweeps, plan.goal().response()), sameSetting(plan));
    }

    /** A day of several labels is for comparing them, and wants no sweep. */
    private static boolean hasLabelsToCompare(List<MeasuredPull> pulls) {
        return pulls.stream()
                        .filter(MeasuredPull::isUsed)
                        .flatMap(pull -> pull.setting().label().stream())
                        .distinct()
                        .count()
                > 1;
    }

    private static Optional<Verdict> verdict(
            SessionInput input, List<MeasuredPull> fitted, DaySoFar soFar, BiFunction<Day, SaidStops, Verdict> judge) {
        if (!sweeps(input.plan())) {
            return Optional.empty();
        }
        Amendments byHand = input.amendments();
        Verdict verdict = judge.apply(dayOf(input, fitted, byHand.lifted()), soFar.stops);
        boolean changed = !byHand.struck().isEmpty() || !byHand.lifted().isEmpty();
        if (!changed || verdict.advice().action() == Action.STOP) {
            return Optional.of(verdict);
        }
        List<MeasuredPull> restored = fitted.stream()
                .map(pull ->
                        byHand.struck().containsKey(pull.number()) ? pull.withStanding(MeasuredPull.Status.USED) : pull)
                .toList();
        Advice counted = Advisor.say(day(input, restored, Set.of()), soFar.stopsUnchanged)
                .advice();
        return Optional.of(
                counted.action() == Action.STOP ? verdict.withEarlier(openedByHand(fitted, counted)) : verdict);
    }

    private static EarlierStop openedByHand(List<MeasuredPull> pulls, Advice stop) {
        int last = pulls.get(pulls.size() - 1).number();
        return new EarlierStop(
                stop.earlier().map(EarlierStop::afterPull).orElse(last),
                stop.earlier().map(EarlierStop::pullsSince).orElse(0),
                Optional.of(new EarlierStop.Reopening(EarlierStop.Cause.BY_HAND, OptionalInt.empty())));
    }

    private static Day day(SessionInput input, List<MeasuredPull> pulls, Set<Integer> lifted) {
        return dayOf(input, Reading.fitted(pulls, input.plan().goal().response()), lifted);
    }

    private static Day dayOf(SessionInput input, List<MeasuredPull> fitted, Set<Integer> lifted) {
        return new Day(
                input.plan(),
                fitted,
                lifted,
                input.experience(),
                input.now(),
                input.next(),
                input.amendments().ownWatch());
    }
}
