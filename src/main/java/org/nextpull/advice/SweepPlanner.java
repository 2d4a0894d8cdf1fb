package org.nextpull.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.nextpull.fit.DecisionLosses;
import org.nextpull.fit.Ladder;
import org.nextpull.fit.Permitted;
import org.nextpull.fit.SettingLoss;
import org.nextpull.fit.Sweep;
import org.nextpull.fit.SweepPoint;
import org.nextpull.fit.SweepPosterior;
import org.nextpull.unit.Span;

/**
 * The next setting of one sweep, or its end. Knows no stages and no plan: pulls so far, priors, room and rules go in, a decision
 * with its numbers comes out.
 */
public final class SweepPlanner {
    /** From this probability on that the peak lies beyond what is permitted, the interval need not narrow any more. */
    private static final double SURELY_LIMITED = 0.8;

    private static final double LIKELY_LIMITED = 0.5;
    private static final double LOW = 0.05;
    private static final double HIGH = 0.95;

    private final SweepQuestion question;
    private final PlannerRules rules;
    private final double highest;

    private SweepPlanner(SweepQuestion question) {
        this.question = question;
        this.rules = question.rules();
        this.highest = question.room().highest();
    }

    /** Decides; at least one pull must have given a response. */
    public static SweepDecision decide(SweepQuestion question) {
        return judge(question).decision();
    }

    /** Decides, and hands on the posterior that the decision was read off. */
    static Judged judge(SweepQuestion question) {
        SweepPlanner planner = new SweepPlanner(question);
        SweepPosterior posterior = SweepPosterior.of(planner.sweep());
        return new Judged(planner.decide(posterior), posterior);
    }

    /** A decision and the posterior behind it. */
    record Judged(SweepDecision decision, SweepPosterior posterior) {}

    private SweepDecision decide(SweepPosterior posterior) {
        DecisionLosses losses = new DecisionLosses(posterior);
        Ladder permitted = ladder(highest);
        if (permitted.count() == 0) {
            return new SweepDecision.Stop(SweepDecision.Why.NO_ROOM, numbers(posterior, losses.at(highest)));
        }
        SettingLoss wanted = losses.recommended(permitted);
        SweepDecision.Numbers numbers = numbers(posterior, wanted);
        CandidateScores scores = new CandidateScores(question, posterior, permitted, wanted);
        Optional<KnockCeiling> ceiling = KnockCeiling.of(question).filter(found -> found.setting() < wanted.setting());
        if (ceiling.isPresent() && ceiling.get().isReached()) {
            return atCeiling(ceiling.get(), losses, numbers);
        }
        OptionalInt doubtful = OptionalInt.empty();
        if (isEnough(numbers)) {
            doubtful = isBelowKnock() ? OptionalInt.empty() : doubtfulPull(posterior, wanted);
            if (doubtful.isEmpty()) {
                return new SweepDecision.Stop(reasonOfEnough(numbers), numbers);
            }
        }
        if (numbers.pulls() >= rules.pulls().most()) {
            return new SweepDecision.Stop(SweepDecision.Why.BUDGET, numbers);
        }
        double top = KnockCeiling.of(question).map(KnockCeiling::setting).orElse(highest);
        Optional<Candidate> best = scores.best(Math.min(highest, top));
        if (best.isEmpty()) {
            return new SweepDecision.Stop(SweepDecision.Why.NO_ROOM, numbers);
        }
        if (best.get().merit() <= 0 && doubtful.isEmpty()) {
            return new SweepDecision.Stop(reasonOfNoGain(numbers), numbers);
        }
        if (doubtful.isEmpty() && !isBelowKnock() && isOutOfReach(posterior, best.get(), numbers)) {
            return new SweepDecision.Stop(reasonOfNoGain(numbers), numbers);
        }
        return new SweepDecision.Pull(best.get(), isRepeat(best.get()), doubtful, numbers);
    }

    /**
     * Whether the pulls that are left cannot narrow the interval enough, even if each of them taught as much as the next one will. Only
     * for a sweep whose best lies within what was run: one that still climbs has more to gain than a narrow interval.
     */
    private boolean isOutOfReach(SweepPosterior posterior, Candidate best, SweepDecision.Numbers numbers) {
        if (numbers.pulls() < rules.pulls().least() || !isWithinClean(numbers)) {
            return false;
        }
        int left = rules.pulls().most() - numbers.pulls();
        double sd = posterior.peak().sd();
        double drop = best.gain().share() / posterior.curvature().centre();
        double share = Math.max(0, 1 - left * drop / (sd * sd));
        return numbers.least().width() * Math.sqrt(share) > 2 * rules.enough().halfWidth();
    }

    private boolean isWithinClean(SweepDecision.Numbers numbers) {
        double reach = 0.6 * question.room().resolution().step();
        return question.mostDaring().isPresent()
                && numbers.wanted().setting() <= question.mostDaring().getAsDouble() + reach;
    }

    /** The graded knock channel lets the sweep go no further, though more torque lies beyond. */
    private SweepDecision atCeiling(KnockCeiling ceiling, DecisionLosses losses, SweepDecision.Numbers numbers) {
        double lossAtCeiling = losses.at(ceiling.setting()).loss();
        if (numbers.pulls() < rules.pulls().most()
                && ceiling.isWorthAnotherReading(lossAtCeiling, numbers.wanted().loss())) {
            Candidate again = new Candidate(
                    ceiling.setting(),
                    lossAtCeiling - numbers.wanted().loss(),
                    new Candidate.Gain(0),
                    new Candidate.Access(lossAtCeiling - numbers.wanted().loss()),
                    0);
            return new SweepDecision.Pull(again, isRepeat(again), OptionalInt.empty(), numbers);
        }
        return new SweepDecision.Stop(SweepDecision.Why.KNOCK_LIMITED, numbers);
    }

    private Sweep sweep() {
        List<SweepPoint> points = new ArrayList<>();
        for (TriedSetting pull : question.tried()) {
            pull.response()
                    .ifPresent(response ->
                            points.add(new SweepPoint(pull.setting(), response, pull.pull(), pull.order())));
        }
        return Sweep.of(points, question.priors(), question.room().allowed(), new Permitted(highest, rules.nearBest()));
    }

    private Ladder ladder(double top) {
        SweepRoom room = question.room();
        double low = Math.min(room.allowed().low(), top);
        return new Ladder(room.start(), room.resolution().step(), Span.of(low, top));
    }

    private boolean isBelowKnock() {
        return question.lowestUnclean().isPresent();
    }

    private boolean isRepeat(Candidate candidate) {
        double same = 0.6 * question.room().resolution().step();
        return question.tried().stream().anyMatch(pull -> Math.abs(pull.setting() - candidate.setting()) <= same);
    }

    private SweepDecision.Numbers numbers(SweepPosterior posterior, SettingLoss wanted) {
        DecisionLosses losses = new DecisionLosses(posterior);
        Optional<SettingLoss> leave = Optional.empty();
        double bracketed = 0;
        if (question.mostDaring().isPresent()) {
            double daring = question.mostDaring().getAsDouble();
            Ladder proven = ladder(Math.min(highest, daring));
            leave = proven.count() == 0 ? Optional.empty() : Optional.of(losses.recommended(proven));
            bracketed = posterior.probabilityPeakBelow(daring);
        }
        return new SweepDecision.Numbers(
                posterior.sweep().points().size(),
                leave,
                wanted,
                posterior.peak().centre(),
                Span.of(posterior.peakQuantile(LOW), posterior.peakQuantile(HIGH)),
                Span.of(posterior.leastQuantile(LOW), posterior.leastQuantile(HIGH)),
                new SweepDecision.Chances(bracketed, 1 - posterior.probabilityPeakBelow(highest)),
                posterior.errorScalePercent());
    }

    private boolean isEnough(SweepDecision.Numbers numbers) {
        PlannerRules.Enough enough = rules.enough();
        return numbers.pulls() >= rules.pulls().least()
                && isWithinClean(numbers)
                && numbers.wanted().decisionLoss() <= enough.decisionLoss()
                && numbers.wanted().probabilityOfBad() <= enough.chanceOfBad().value()
                && (numbers.least().width() <= 2 * enough.halfWidth()
                        || numbers.chances().limited() > SURELY_LIMITED);
    }

    /** The pull without which the answer would not be good enough: one outlier must not carry the verdict. */
    private OptionalInt doubtfulPull(SweepPosterior posterior, SettingLoss wanted) {
        double worst = rules.enough().guardLoss().share();
        OptionalInt doubtful = OptionalInt.empty();
        List<SweepPoint> points = posterior.sweep().points();
        for (int i = 0; i < points.size() && points.size() > 1; i++) {
            double loss = new DecisionLosses(posterior.without(i))
                    .at(wanted.setting())
                    .decisionLoss();
            if (loss > worst) {
                worst = loss;
                doubtful = OptionalInt.of(points.get(i).pull());
            }
        }
        return doubtful;
    }

    private SweepDecision.Why reasonOfEnough(SweepDecision.Numbers numbers) {
        if (numbers.chances().limited() <= LIKELY_LIMITED) {
            return SweepDecision.Why.SETTLED;
        }
        return limitedBy();
    }

    private SweepDecision.Why reasonOfNoGain(SweepDecision.Numbers numbers) {
        if (numbers.chances().limited() <= LIKELY_LIMITED) {
            return SweepDecision.Why.SCATTER_LIMITED;
        }
        return limitedBy();
    }

    private SweepDecision.Why limitedBy() {
        SweepRoom room = question.room();
        return room.highest() < room.allowed().high() ? SweepDecision.Why.KNOCK_LIMITED : SweepDecision.Why.PLAN_LIMIT;
    }
}
