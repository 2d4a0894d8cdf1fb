package org.nextpull.session;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.advice.Chosen;
import org.nextpull.advice.Verdict;
import org.nextpull.compare.Comparison;
import org.nextpull.compare.MeasuredComparison;
import org.nextpull.fuel.FlowComparison;
import org.nextpull.fuel.FuelProperty;
import org.nextpull.fuel.FuelSwap;
import org.nextpull.plan.Goal;
import org.nextpull.plan.SweepPlan;
import org.nextpull.response.MeasuredPull;
import org.nextpull.scatter.Scatter;
import org.nextpull.unit.Span;
import org.nextpull.unit.Temperature;

/**
 * How far a day has come that decides between candidates, and what it says of them.
 *
 * @param candidates in the order of the plan, the reference first
 * @param order labels of the decision runs, one by one, without pulls that flush; empty before all candidates have had their sweep
 * @param done decision runs of the last day
 * @param runs the decision runs of all days
 * @param scatters of each candidate as its own sweep told it; empty before all have had theirs
 * @param comparison of the decision runs; empty before there are two of each
 * @param isDecided whether no further decision run is asked for
 */
public record CandidateDay(
        List<State> candidates,
        List<String> order,
        int done,
        List<MeasuredPull> runs,
        Map<String, Scatter> scatters,
        Optional<MeasuredComparison> comparison,
        boolean isDecided) {
    public CandidateDay {
        candidates = List.copyOf(candidates);
        order = List.copyOf(order);
        runs = List.copyOf(runs);
        scatters = Map.copyOf(scatters);
    }

    /**
     * One candidate.
     *
     * @param plan what the plan says of it
     * @param swept what its own sweep says; empty before it
     * @param swap what its fuel asks for in place of the reference's, each at the mixture that is best for it; empty for the reference,
     *     and where a fuel is not known
     * @param shares where its gain comes from; empty for the reference, before it is told, and where its sweep did not run as far as the
     *     setting of the reference
     * @param hottestExhaust highest exhaust temperature in its decision runs
     * @param knockRpm lowest and highest speed at which it knocked in any pull; empty where none was heard or its speed is not known
     */
    public record State(
            SweepPlan.Candidate plan,
            Optional<Verdict> swept,
            Optional<FuelSwap> swap,
            Optional<Shares> shares,
            Optional<Temperature> hottestExhaust,
            Optional<Span> knockRpm) {
        /** What stays in the engine with it, by its sweep. */
        public Optional<Chosen> chosen() {
            return swept.flatMap(Verdict::chosen);
        }
    }

    /**
     * Where the gain of a candidate at its own best over the reference at its own comes from.
     *
     * @param setting what its own spark and mixture make over those of the reference, on the candidate itself
     * @param itself the candidate at the setting of the reference, over the reference
     */
    public record Shares(Share setting, Share itself) {}

    /** A part of a gain in percent, with its 95 % interval. */
    public record Share(double percent, Comparison.PercentInterval interval) {}

    /**
     * What the same power takes of a candidate's fuel, over what it takes of the reference's; each at its own best mixture.
     *
     * @param mass in kg for each kg
     * @param volume in litres for each litre; empty where a density is not known
     * @param energy in J for each J; empty where a heating value is not known
     * @param cost of an hour; empty where a price or a density is not known
     */
    public record Consumption(double mass, OptionalDouble volume, OptionalDouble energy, OptionalDouble cost) {}

    /** What the decision runs say of a candidate against the reference; empty for that and before there are two of each. */
    public Optional<Comparison> gain(State state, Goal.Response response) {
        return comparison.flatMap(told -> told.by(response).of(state.plan().label()));
    }

    /** The consumption of a candidate at equal power; empty for the reference and before the decision runs say what it makes. */
    public Optional<Consumption> consumption(State state, Goal.Response response) {
        return state.swap()
                .flatMap(swap -> gain(state, response)
                        .map(gain -> consumption(
                                state, swap.flow(), 1 + gain.difference().percent() / 100)));
    }

    private Consumption consumption(State state, FlowComparison flow, double power) {
        OptionalDouble heat = flow.dose().fuel().value(FuelProperty.LOWER_HEATING_VALUE);
        OptionalDouble against = flow.against().fuel().value(FuelProperty.LOWER_HEATING_VALUE);
        OptionalDouble price = state.plan().pricePerLitre();
        OptionalDouble other = reference().pricePerLitre();
        OptionalDouble volume = times(flow.volumeRatio(), 1 / power);
        return new Consumption(
                flow.massRatio() / power,
                volume,
                heat.isPresent() && against.isPresent()
                        ? OptionalDouble.of(flow.massRatio() / power * heat.getAsDouble() / against.getAsDouble())
                        : OptionalDouble.empty(),
                price.isPresent() && other.isPresent() && other.getAsDouble() > 0
                        ? times(volume, price.getAsDouble() / other.getAsDouble())
                        : OptionalDouble.empty());
    }

    private static OptionalDouble times(OptionalDouble value, double factor) {
        return value.isPresent() ? OptionalDouble.of(value.getAsDouble() * factor) : value;
    }

    /** The best that is proven, where the day has ended and one is. */
    public Optional<State> best(Goal.Response response) {
        return comparison.filter(told -> isDecided).stream()
                .flatMap(told -> told.by(response).comparisons().stream())
                .filter(one -> one.verdict() == Comparison.Verdict.MORE)
                .findFirst()
                .flatMap(one -> candidates.stream()
                        .filter(state -> state.plan().label().equals(one.label()))
                        .findFirst());
    }

    public SweepPlan.Candidate reference() {
        return candidates.get(0).plan();
    }

    /** Whether all have had their sweep, so that it is decided between them. */
    public boolean isDeciding() {
        return !order.isEmpty();
    }
}
