package org.nextpull.session;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.stream.Stream;
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
import org.nextpull.compare.MeasuredComparison;
import org.nextpull.fuel.Fuel;
import org.nextpull.fuel.FuelSwap;
import org.nextpull.plan.SweepPlan;
import org.nextpull.response.MeasuredPull;

/**
 * A day that decides between candidates: the sweep of each, one after the other, then decision runs of all at their own best, in blocks
 * that end when the difference is told or the planned runs are used up. The gain comes from the decision runs alone, not from the best
 * pulls of the sweeps. Read off the pulls, so that a day says the same live, replayed and as a whole.
 */
final class CandidatePlanner {
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

    private CandidatePlanner(
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
        return new CandidatePlanner(plan, pulls, before, announced, days, judged).answer();
    }

    private Answer answer() {
        for (SweepPlan.Candidate candidate : plan.candidates()) {
            int end = endOfSweep(candidate);
            boolean begun = pulls.subList(0, end).stream().anyMatch(pull -> CandidateStates.isOf(pull, candidate));
            if (!begun) {
                return new Answer(begins(candidate), day(DecisionRuns.none(plan)));
            }
            Verdict verdict = judge(pulls.subList(0, end), candidate);
            if (candidate.equals(plan.candidates().get(plan.candidates().size() - 1))) {
                verdict = firstStop(candidate, verdict, end);
            }
            swept.put(candidate.label(), verdict);
            if (end == pulls.size() && verdict.advice().action() != Action.STOP && isFitted(candidate)) {
                return new Answer(verdict, day(DecisionRuns.none(plan)));
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
        DecisionRuns decision = DecisionRuns.of(plan, swept, pulls.subList(sweeps, pulls.size()));
        return new Answer(decision.isDecided() ? ends(decision) : runs(decision), day(decision));
    }

    private Verdict verdict(String label) {
        return Optional.ofNullable(swept.get(label)).orElseThrow();
    }

    private Verdict runs(DecisionRuns decision) {
        int done = decision.runs().size();
        int planned = decision.order().size();
        String label = decision.order().get(done);
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

    private Verdict ends(DecisionRuns decision) {
        Verdict own = verdict(decision.best());
        return own.withAdvice(new Advice(
                Action.STOP,
                AdviceCode.DECIDED,
                Optional.empty(),
                new Reason.Decided(decision.best(), decision.isTold()),
                Optional.empty(),
                own.chosen()));
    }

    private CandidateDay day(DecisionRuns decision) {
        List<MeasuredPull> own = decision.planned();
        List<MeasuredPull> all = Stream.concat(before.stream(), own.stream()).toList();
        // days join as they are known now: nobody looks at one again for the sake of another
        Optional<MeasuredComparison> joined = before.isEmpty() ? decision.told() : decision.joined(all);
        return new CandidateDay(
                states.with(all, joined.map(told -> told.by(plan.goal().response()))),
                decision.order(),
                own.size(),
                all,
                decision.scatters(),
                joined,
                decision.isDecided());
    }
}
