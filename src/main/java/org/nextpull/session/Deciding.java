package org.nextpull.session;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import org.nextpull.advice.Action;
import org.nextpull.advice.Advice;
import org.nextpull.advice.AdviceCode;
import org.nextpull.advice.Advisor;
import org.nextpull.advice.Chosen;
import org.nextpull.advice.Day;
import org.nextpull.advice.NextConfiguration;
import org.nextpull.advice.Reason;
import org.nextpull.advice.Verdict;
import org.nextpull.channel.EngineSetting;
import org.nextpull.compare.Comparison;
import org.nextpull.compare.ComparisonRequest;
import org.nextpull.compare.ComparisonResult;
import org.nextpull.compare.FurtherPulls;
import org.nextpull.compare.InterimLooks;
import org.nextpull.compare.MeasuredComparison;
import org.nextpull.compare.PullPlan;
import org.nextpull.fuel.Fuel;
import org.nextpull.fuel.FuelSwap;
import org.nextpull.plan.SweepPlan;
import org.nextpull.response.MeasuredPull;
import org.nextpull.scatter.Repeatability;
import org.nextpull.scatter.Scatter;

/**
 * A day that decides between candidates: the sweep of each, one after the other, then decision runs of all at their own best, in blocks
 * that end when the difference is told or the planned runs are used up. The gain comes from the decision runs alone, not from the best
 * pulls of the sweeps. Read off the pulls, so that a day says the same live, replayed and as a whole.
 */
final class Deciding {
    /** Runs in blocks that change each label with the reference so often: after fewer nobody can tell a label from a bow of the day. */
    private static final int CHANGE_OVERS = 3;

    private static final double POWER = 0.8;
    private static final double USUAL_SCATTER_PERCENT = 0.3;
    private static final double LEAST_SCATTER_PERCENT = 0.1;
    /** After the planned runs the day goes on at most so often. */
    private static final int MOST_ROUNDS = 2;

    private static final long SEED = 1;

    private final SweepPlan plan;
    private final List<MeasuredPull> pulls;
    private final List<MeasuredPull> before;
    private final BiFunction<List<MeasuredPull>, NextConfiguration, Day> days;
    private final Optional<String> announced;
    private final Map<Sweep, Verdict> judged;
    private final Map<String, Verdict> swept = new LinkedHashMap<>();
    private final CandidateStates states;
    /** Pulls of the day up to the end of the last sweep. */
    private int sweeps;

    private Deciding(
            SweepPlan plan,
            List<MeasuredPull> pulls,
            List<MeasuredPull> before,
            Optional<String> announced,
            BiFunction<List<MeasuredPull>, NextConfiguration, Day> days,
            Map<Sweep, Verdict> judged) {
        this.plan = plan;
        this.pulls = pulls;
        this.before = before;
        this.announced = announced;
        this.days = days;
        this.judged = judged;
        states = new CandidateStates(plan, pulls, swept);
    }

    /** The pulls of a day up to one of the sweep of a candidate. */
    record Sweep(String label, List<MeasuredPull> pulls) {}

    /** What the day says next, and of its candidates. */
    record Answer(Verdict verdict, CandidateDay day) {}

    /**
     * The answer of a day so far.
     *
     * @param before decision runs of earlier days, which count in the answer beside those of this one
     * @param announced label of what was said to be fitted for the next pull
     * @param days makes the day of the first pulls for what is fitted next
     * @param judged what was judged before, since a sweep that has ended says the same after every later pull; grows
     */
    static Answer of(
            SweepPlan plan,
            List<MeasuredPull> pulls,
            List<MeasuredPull> before,
            Optional<String> announced,
            BiFunction<List<MeasuredPull>, NextConfiguration, Day> days,
            Map<Sweep, Verdict> judged) {
        return new Deciding(plan, pulls, before, announced, days, judged).answer();
    }

    private Answer answer() {
        for (SweepPlan.Candidate candidate : plan.candidates()) {
            int end = endOfSweep(candidate);
            boolean begun = pulls.subList(0, end).stream().anyMatch(pull -> CandidateStates.isOf(pull, candidate));
            if (!begun) {
                return new Answer(begins(candidate), day(List.of(), List.of(), Optional.empty(), false));
            }
            Verdict verdict = judge(pulls.subList(0, end), candidate);
            if (candidate.equals(plan.candidates().get(plan.candidates().size() - 1))) {
                verdict = firstStop(candidate, verdict, end);
            }
            swept.put(candidate.label(), verdict);
            if (end == pulls.size() && verdict.advice().action() != Action.STOP && isFitted(candidate)) {
                return new Answer(verdict, day(List.of(), List.of(), Optional.empty(), false));
            }
        }
        return decide();
    }

    /** The first block of pulls of a candidate ends when another is fitted; pulls after its stop count for the decision. */
    private int endOfSweep(SweepPlan.Candidate candidate) {
        int index = 0;
        while (index < pulls.size() && !CandidateStates.isOf(pulls.get(index), candidate)) {
            index++;
        }
        while (index < pulls.size() && CandidateStates.isOf(pulls.get(index), candidate)) {
            index++;
        }
        return index;
    }

    /** Decision runs may follow the last sweep without a change-over: its stop is the first of those that were said on end. */
    private Verdict firstStop(SweepPlan.Candidate candidate, Verdict last, int end) {
        Verdict stop = last;
        sweeps = end;
        while (stop.advice().action() == Action.STOP) {
            Verdict before = judge(pulls.subList(0, sweeps - 1), candidate);
            if (before.advice().action() != Action.STOP || !CandidateStates.isOf(pulls.get(sweeps - 1), candidate)) {
                return stop;
            }
            stop = before;
            sweeps--;
        }
        return stop;
    }

    private Verdict judge(List<MeasuredPull> first, SweepPlan.Candidate candidate) {
        return judged.computeIfAbsent(
                new Sweep(candidate.label(), List.copyOf(first)),
                any -> Advisor.judge(taught(candidate, days.apply(first, fitted(candidate)))));
    }

    /** What the sweep before taught goes on to the next: the engine is the same, and only its fuel or a part is another. */
    private Day taught(SweepPlan.Candidate candidate, Day day) {
        int before = plan.candidates().indexOf(candidate) - 1;
        return before < 0
                ? day
                : verdict(plan.candidates().get(before).label())
                        .teaches()
                        .map(day::withTaught)
                        .orElse(day);
    }

    private NextConfiguration fitted(SweepPlan.Candidate candidate) {
        return new NextConfiguration(
                Optional.of(candidate.label()),
                candidate.fuel().or(() -> plan.fuel().blend()));
    }

    private boolean isFitted(SweepPlan.Candidate candidate) {
        return fittedNow().equals(candidate.label());
    }

    /** What is fitted: what was announced, else that of the last pull, and before any pull the reference. */
    private String fittedNow() {
        Optional<String> last = pulls.isEmpty()
                ? Optional.empty()
                : pulls.get(pulls.size() - 1).setting().label();
        return announced.or(() -> last).orElse(plan.candidates().get(0).label());
    }

    private Verdict begins(SweepPlan.Candidate candidate) {
        Verdict verdict = judge(pulls, candidate);
        return isFitted(candidate) || verdict.advice().action() == Action.STOP
                ? verdict
                : verdict.withAdvice(changed(verdict.advice(), candidate));
    }

    private Advice changed(Advice advice, SweepPlan.Candidate to) {
        return new Advice(
                advice.action(),
                AdviceCode.CHANGE_OVER,
                advice.setting(),
                changeOver(to),
                advice.waitFor(),
                advice.leave());
    }

    private Reason changeOver(SweepPlan.Candidate to) {
        Optional<Fuel> before = plan.candidate(fittedNow()).flatMap(states::fuel);
        Optional<Reason.Flow> flow = states.fuel(to)
                .flatMap(now -> before.filter(last -> !last.name().equals(now.name()))
                        .flatMap(last -> FuelSwap.atBestPower(now, last)))
                .flatMap(swap -> swap.flow().volumeRatio().stream().boxed().findFirst())
                .map(this::flow);
        return new Reason.ChangeOver(to.label(), to.fuel().or(() -> plan.fuel().blend()), flow);
    }

    /** The duty of the last pull grows as the litres do: its air and its pressure stay. */
    private Reason.Flow flow(double litresTimes) {
        OptionalDouble duty = pulls.isEmpty()
                ? OptionalDouble.empty()
                : pulls.get(pulls.size() - 1).conditions().injectorDuty();
        return new Reason.Flow(
                litresTimes,
                duty.isPresent() ? OptionalDouble.of(litresTimes * duty.getAsDouble()) : duty,
                plan.limits().injectorDutyMost().orElse(1));
    }

    private Answer decide() {
        List<MeasuredPull> runs = pulls.subList(sweeps, pulls.size()).stream()
                .filter(MeasuredPull::isUsed)
                .filter(pull -> pull.setting().label().flatMap(plan::candidate).isPresent())
                .toList();
        List<String> order = new ArrayList<>(planned());
        InterimLooks looks = new InterimLooks.Planned(order.size());
        Optional<MeasuredComparison> told = compared(alike(runs, order.size()), looks);
        for (int round = 0; round < MOST_ROUNDS && runs.size() >= order.size(); round++) {
            Optional<FurtherPulls> further = told.flatMap(found -> by(found).further());
            if (further.isEmpty()) {
                break;
            }
            order.addAll(further.get().order());
            looks = further.get().looks();
            told = compared(alike(runs, order.size()), looks);
        }
        boolean decided =
                runs.size() >= order.size() || told.filter(this::isTold).isPresent();
        Verdict next = decided ? ends(told) : runs(order.get(runs.size()), order.size(), runs.size());
        return new Answer(next, day(runs, order, told, decided));
    }

    private Verdict verdict(String label) {
        return Optional.ofNullable(swept.get(label)).orElseThrow();
    }

    /** The order of least pulls for the plan's worth; it begins with what is fitted when the last sweep ends. */
    private List<String> planned() {
        Repeatability known = Session.repeatability(plan, pulls.subList(0, sweeps));
        double scatter = known.scatter().map(Scatter::percent).orElse(USUAL_SCATTER_PERCENT);
        List<String> labels =
                plan.candidates().stream().map(SweepPlan.Candidate::label).toList();
        List<String> order = new ArrayList<>(PullPlan.decision(
                        Math.max(LEAST_SCATTER_PERCENT, scatter),
                        new PullPlan.Wish(plan.goal().worthPercent(), POWER),
                        labels,
                        CHANGE_OVERS)
                .order());
        Collections.reverse(order);
        return order;
    }

    private Optional<MeasuredComparison> compared(List<MeasuredPull> runs, InterimLooks looks) {
        ComparisonRequest request = new ComparisonRequest(
                plan.candidates().get(0).label(), plan.goal().worthPercent(), looks, SEED);
        return MeasuredComparison.of(runs, request, plan.goal().response()).value();
    }

    private ComparisonResult by(MeasuredComparison comparison) {
        return comparison.by(plan.goal().response());
    }

    private boolean isTold(MeasuredComparison comparison) {
        List<Comparison> all = by(comparison).comparisons();
        return all.size() == plan.candidates().size() - 1
                && all.stream().noneMatch(one -> one.verdict() == Comparison.Verdict.CANNOT_TELL);
    }

    private Verdict runs(String label, int planned, int done) {
        SweepPlan.Candidate candidate = plan.candidate(label).orElseThrow();
        Verdict own = verdict(label);
        boolean unclean = pulls.subList(endOfSweep(candidate), pulls.size()).stream()
                .anyMatch(pull -> CandidateStates.isOf(pull, candidate) && !pull.isClean());
        Verdict now = unclean ? judge(pulls, candidate) : own;
        Optional<EngineSetting> setting = now.chosen().map(Chosen::setting);
        if (setting.isEmpty()) {
            return now;
        }
        boolean fitted = isFitted(candidate);
        return now.withAdvice(new Advice(
                fitted ? Action.REPEAT : Action.PULL,
                fitted ? AdviceCode.DECIDE : AdviceCode.CHANGE_OVER,
                setting,
                fitted ? new Reason.Deciding(label, done + 1, planned) : changeOver(candidate),
                Optional.empty(),
                now.chosen()));
    }

    /** The best that is proven, else the reference. */
    private Verdict ends(Optional<MeasuredComparison> told) {
        String best = told.stream()
                .flatMap(found -> by(found).comparisons().stream())
                .filter(one -> one.verdict() == Comparison.Verdict.MORE)
                .map(Comparison::label)
                .findFirst()
                .orElse(plan.candidates().get(0).label());
        Verdict own = verdict(best);
        boolean settled = told.filter(this::isTold).isPresent();
        return own.withAdvice(new Advice(
                Action.STOP,
                AdviceCode.DECIDED,
                Optional.empty(),
                new Reason.Decided(best, settled),
                Optional.empty(),
                own.chosen()));
    }

    /** Those of the decision runs that ran at the setting of their candidate. */
    private static List<MeasuredPull> alike(List<MeasuredPull> runs, int most) {
        return ComparedDay.LikePulls.of(runs.subList(0, Math.min(most, runs.size())))
                .pulls();
    }

    private CandidateDay day(
            List<MeasuredPull> runs, List<String> order, Optional<MeasuredComparison> told, boolean decided) {
        List<MeasuredPull> all = new ArrayList<>(before);
        all.addAll(runs.subList(0, Math.min(order.size(), runs.size())));
        // days join as they are known now: nobody looks at one again for the sake of another
        Optional<MeasuredComparison> joined = before.isEmpty() ? told : compared(all, new InterimLooks.Open(0));
        return new CandidateDay(
                states.with(all, joined.map(this::by)), order, all.size() - before.size(), all, joined, decided);
    }
}
