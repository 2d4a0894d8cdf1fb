package org.nextpull.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.nextpull.finding.Place;
import org.nextpull.fuel.Blends;
import org.nextpull.fuel.Fuel;

/**
 * The operator's plan for a sweep or a comparison. Every quantity is in the project's unit.
 *
 * @param engine the engine
 * @param fuel the fuel
 * @param candidates the fuels or parts between which the day decides, the reference first; none where it sweeps one
 * @param dyno the dyno
 * @param air correction and weather
 * @param band the speed range of the answer; logs need it, tables of results do not
 * @param pull how pulls look in the log
 * @param timing the spark sweep; empty when spark is left alone
 * @param mixture the mixture sweep; empty when the mixture is left alone
 * @param limits stop limits
 * @param start what must hold before a pull
 * @param sheet words for the sheet
 * @param goal what is looked for
 * @param log how to read logs
 * @param wires serial sources
 */
public record SweepPlan(
        EngineFacts engine,
        FuelChoice fuel,
        List<CandidatePlan> candidates,
        DynoFacts dyno,
        AirFacts air,
        Optional<Band> band,
        PullFacts pull,
        Optional<TimingPlan> timing,
        Optional<MixturePlan> mixture,
        Limits limits,
        StartWindow start,
        SheetFacts sheet,
        Goal goal,
        LogFacts log,
        List<WireFacts> wires) {
    public SweepPlan {
        candidates = List.copyOf(candidates);
        wires = List.copyOf(wires);
    }

    /** The plan that an empty file stands for. */
    public static SweepPlan defaults() {
        return new SweepPlan(
                EngineFacts.defaults(),
                FuelChoice.defaults(),
                List.of(),
                DynoFacts.defaults(),
                AirFacts.defaults(),
                Optional.empty(),
                PullFacts.defaults(),
                Optional.empty(),
                Optional.empty(),
                Limits.defaults(),
                StartWindow.defaults(),
                SheetFacts.defaults(),
                Goal.defaults(),
                LogFacts.defaults(),
                List.of());
    }

    public SweepPlan withLimits(Limits newLimits) {
        return new SweepPlan(
                engine,
                fuel,
                candidates,
                dyno,
                air,
                band,
                pull,
                timing,
                mixture,
                newLimits,
                start,
                sheet,
                goal,
                log,
                wires);
    }

    /** The limits that a live channel must watch: those that are set and, where the mixture is swept, lambda. */
    public List<Limit> watched() {
        List<Limit> watched = new ArrayList<>(limits.set());
        if (mixture.isPresent() && !watched.contains(Limit.LEAN)) {
            watched.add(Limit.LEAN);
        }
        return watched;
    }

    /** Whether the day finds each candidate's own best and then decides between them. */
    public boolean decides() {
        return !candidates.isEmpty() && (timing.isPresent() || mixture.isPresent());
    }

    /** The fuel in the tank and those of the candidates, as far as they are known, each once. */
    public List<Fuel> namedFuels() {
        Optional<Blends> known = fuel.blends().value();
        return Stream.concat(fuel.blend().stream(), candidates.stream().flatMap(one -> one.fuel().stream()))
                .distinct()
                .flatMap(name -> known
                        .flatMap(blends -> blends.find(name, Place.nowhere()).value())
                        .stream())
                .toList();
    }

    /** The candidate of that label. */
    public Optional<CandidatePlan> candidate(String label) {
        return candidates.stream().filter(one -> one.label().equals(label)).findFirst();
    }

    /** Whether it sweeps something and wants what earlier days taught of it. */
    public boolean wantsEarlierDays() {
        return goal.learnFromNotebook() && (timing.isPresent() || mixture.isPresent());
    }
}
