package org.nextpull.advice;

import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.fit.DecisionLosses;
import org.nextpull.fit.Ladder;
import org.nextpull.fit.PullValue;
import org.nextpull.fit.SettingLoss;
import org.nextpull.fit.SweepPosterior;
import org.nextpull.unit.Span;

/** What each setting that may be pulled next is worth. */
final class CandidateScores {
    /** How far below the start candidates may lie, when the peak does not lie well above it. */
    private static final double BELOW_START = 6;

    private static final double WELL_ABOVE = 5;

    private static final double LIKELY = 0.5;
    private static final double UNLIKELY = 0.1;

    /** Chance of knock in each degree beyond what was run clean, as long as nothing foretells it. */
    private static final double HAZARD = 0.02;

    /** Candidates this close together are worth about the same: first every one of these, then the neighbours of the best. */
    private static final double COARSE = 1.0;

    private static final double NOTHING = 1e-9;

    private final SweepQuestion question;
    private final SweepPosterior posterior;
    private final Optional<PullValue.LossDrops> lossDrops;
    private final PullValue value;
    private final DecisionLosses losses;
    private final double order;
    private final double daring;
    private final OptionalDouble knockAt;
    private final OptionalDouble lossAtDaring;
    private final double risenAtDaring;

    CandidateScores(SweepQuestion question, SweepPosterior posterior, Ladder permitted, SettingLoss wanted) {
        this.question = question;
        this.posterior = posterior;
        value = new PullValue(posterior);
        losses = new DecisionLosses(posterior);
        order = 1
                + question.tried().stream()
                        .mapToDouble(TriedSetting::order)
                        .max()
                        .orElse(-1);
        SweepRoom room = question.room();
        daring = question.mostDaring().orElse(Math.min(room.start(), room.highest()));
        knockAt = question.lowestUnclean();
        lossDrops = knockAt.isPresent() ? Optional.of(value.lossDrops(permitted)) : Optional.empty();
        risenAtDaring = losses.at(daring).loss();
        lossAtDaring = wanted.setting() > daring
                ? OptionalDouble.of(losses.at(daring).decisionLoss())
                : OptionalDouble.empty();
    }

    /** The settings that may be pulled, none above the top. */
    private Ladder ladder(double top) {
        SweepRoom room = question.room();
        double peak = posterior.peak().centre();
        double low = peak - WELL_ABOVE < room.start() ? room.start() - BELOW_START : room.start();
        low = Math.max(room.allowed().low(), Math.min(low, daring));
        double high = Math.min(daring + room.largestStep(), top);
        double step = room.resolution().step();
        return new Ladder(room.start(), step, high < low ? Span.of(high, high) : Span.of(low, high));
    }

    /** The best setting to pull next that is not above the top; empty when there is none. */
    Optional<Candidate> best(double top) {
        Ladder ladder = ladder(top);
        int stride = (int) Math.max(1, Math.round(COARSE / ladder.step()));
        Optional<Candidate> found = Optional.empty();
        for (int i = ladder.count() - 1; i >= 0; i -= stride) {
            found = better(found, ladder.setting(i));
        }
        if (found.isEmpty() || stride == 1) {
            return found;
        }
        double middle = found.get().setting();
        for (int away = 1; away < stride; away++) {
            for (double setting : new double[] {middle - away * ladder.step(), middle + away * ladder.step()}) {
                if (ladder.within().contains(setting)) {
                    found = better(found, setting);
                }
            }
        }
        return found;
    }

    private Optional<Candidate> better(Optional<Candidate> soFar, double setting) {
        double beyond = Math.max(0, setting - daring);
        if (beyond > 0 && isTooFar(setting)) {
            return soFar;
        }
        Candidate next = score(setting, beyond);
        return soFar.isEmpty() || next.merit() > soFar.get().merit() ? Optional.of(next) : soFar;
    }

    private boolean isTooFar(double setting) {
        PlannerRules.PastPeak pastPeak = question.rules().pastPeak();
        return isTooSteep(setting)
                || posterior.probabilityPeakBelow(setting - pastPeak.likely()) > LIKELY
                || posterior.probabilityPeakBelow(setting - pastPeak.unlikely()) > UNLIKELY;
    }

    private boolean isTooSteep(double setting) {
        PlannerRules.Climb climb = question.rules().climb();
        return setting - daring > climb.leastStep() + NOTHING
                && risenAtDaring - losses.at(setting).loss() > climb.rise();
    }

    private Candidate score(double setting, double beyond) {
        PlannerRules.Prices prices = question.rules().prices();
        double gain;
        double price;
        double chance;
        if (lossDrops.isPresent()) {
            gain = lossDrops.get().at(setting, order);
            double gap = knockAt.orElse(setting) - daring;
            chance = gap > 0 ? Math.min(1, beyond / gap) : 0;
            price = prices.pullBelowKnock().share() + chance * prices.knockMet().share();
        } else {
            gain = posterior.curvature().centre() * value.varianceDrop(setting, order);
            chance = 1 - Math.exp(-HAZARD * beyond);
            price = prices.pull().share() + chance * prices.knock().share();
        }
        double access = 0;
        if (beyond > 0 && lossAtDaring.isPresent()) {
            double saved = lossAtDaring.getAsDouble() - losses.at(setting).decisionLoss();
            access = Math.max(0, saved) * (1 - chance);
        }
        return new Candidate(
                setting, gain + access - price, new Candidate.Gain(gain), new Candidate.Access(access), chance);
    }
}
