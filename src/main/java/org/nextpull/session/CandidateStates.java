package org.nextpull.session;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.nextpull.advice.Verdict;
import org.nextpull.compare.Comparison;
import org.nextpull.compare.ComparisonResult;
import org.nextpull.finding.Place;
import org.nextpull.fit.PosteriorValue;
import org.nextpull.fuel.Blends;
import org.nextpull.fuel.Fuel;
import org.nextpull.fuel.FuelDose;
import org.nextpull.fuel.FuelSwap;
import org.nextpull.plan.SweepPlan;
import org.nextpull.response.KnockHeard;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Span;
import org.nextpull.unit.Temperature;

/**
 * What a day says of each of its candidates.
 *
 * @param pulls all of the day
 * @param swept what the sweeps say that have ended, by label
 */
record CandidateStates(SweepPlan plan, List<MeasuredPull> pulls, Map<String, Verdict> swept) {
    /**
     * The candidates in the order of the plan.
     *
     * @param runs the decision runs
     * @param told what they tell
     */
    List<CandidateDay.State> with(List<MeasuredPull> runs, Optional<ComparisonResult> told) {
        SweepPlan.Candidate reference = plan.candidates().get(0);
        return plan.candidates().stream()
                .map(one -> new CandidateDay.State(
                        one,
                        verdict(one),
                        one.equals(reference) ? Optional.empty() : swap(one, reference),
                        told.flatMap(found -> found.of(one.label())).flatMap(gain -> shares(one, reference, gain)),
                        runs.stream()
                                .filter(pull -> isOf(pull, one))
                                .flatMap(pull -> pull.conditions().hottestExhaust().stream())
                                .max(Comparator.comparingDouble(Temperature::kelvins)),
                        knockRpm(one)))
                .toList();
    }

    static boolean isOf(MeasuredPull pull, SweepPlan.Candidate candidate) {
        return pull.setting().label().equals(Optional.of(candidate.label()));
    }

    private Optional<Verdict> verdict(SweepPlan.Candidate candidate) {
        return Optional.ofNullable(swept.get(candidate.label()));
    }

    /** The share of its own setting is read off its own surface; what is left of the gain is the candidate itself. */
    private Optional<CandidateDay.Shares> shares(
            SweepPlan.Candidate candidate, SweepPlan.Candidate reference, Comparison gain) {
        Optional<PosteriorValue> bySetting = verdict(reference)
                .flatMap(Verdict::chosen)
                .flatMap(theirs -> verdict(candidate).flatMap(own -> own.gainOver(theirs.setting())));
        return bySetting.map(estimate -> {
            Span setting = estimate.interval(ComparisonResult.INTERVAL_PERCENT);
            double percent = gain.difference().percent();
            Comparison.PercentInterval whole = gain.difference().interval();
            double itself = percent - estimate.mean();
            return new CandidateDay.Shares(
                    new CandidateDay.Share(
                            estimate.mean(), new Comparison.PercentInterval(setting.low(), setting.high())),
                    new CandidateDay.Share(
                            itself,
                            new Comparison.PercentInterval(
                                    itself - Math.hypot(percent - whole.low(), setting.high() - estimate.mean()),
                                    itself + Math.hypot(whole.high() - percent, estimate.mean() - setting.low()))));
        });
    }

    private Optional<Span> knockRpm(SweepPlan.Candidate candidate) {
        List<KnockHeard.Speeds> heard = pulls.stream()
                .filter(pull -> isOf(pull, candidate))
                .flatMap(pull -> pull.knock().speeds().stream())
                .toList();
        return heard.isEmpty()
                ? Optional.empty()
                : Optional.of(Span.of(
                        heard.stream()
                                .mapToDouble(KnockHeard.Speeds::lowRpm)
                                .min()
                                .orElseThrow(),
                        heard.stream()
                                .mapToDouble(KnockHeard.Speeds::highRpm)
                                .max()
                                .orElseThrow()));
    }

    private Optional<FuelSwap> swap(SweepPlan.Candidate candidate, SweepPlan.Candidate reference) {
        return dose(candidate).flatMap(own -> dose(reference).map(other -> FuelSwap.between(own, other)));
    }

    /** The candidate's fuel at the mixture that its sweep chose, or at that which commonly is best on it. */
    private Optional<FuelDose> dose(SweepPlan.Candidate candidate) {
        return fuel(candidate)
                .map(fuel -> verdict(candidate)
                        .flatMap(Verdict::chosen)
                        .flatMap(chosen -> chosen.setting().lambda())
                        .map(lambda -> new FuelDose(fuel, lambda))
                        .orElseGet(() -> FuelDose.atBestPower(fuel)));
    }

    Optional<Fuel> fuel(SweepPlan.Candidate candidate) {
        return candidate
                .fuel()
                .or(() -> plan.fuel().blend())
                .flatMap(name -> plan.fuel()
                        .blends()
                        .then((Blends known) -> known.find(name, Place.nowhere()))
                        .value());
    }
}
