package org.nextpull.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.nextpull.air.CorrectionStandard;
import org.nextpull.air.NoCorrection;
import org.nextpull.channel.LogHints;
import org.nextpull.finding.Place;
import org.nextpull.fuel.Blends;
import org.nextpull.fuel.Fuel;
import org.nextpull.unit.Pressure;
import org.nextpull.unit.Temperature;

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
        List<Candidate> candidates,
        DynoFacts dyno,
        AirFacts air,
        Optional<Band> band,
        PullFacts pull,
        Optional<TimingPlan> timing,
        Optional<MixturePlan> mixture,
        Limits limits,
        StartConditions start,
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
                StartConditions.defaults(),
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

    public SweepPlan withLog(LogFacts newLog) {
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
                limits,
                start,
                sheet,
                goal,
                newLog,
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
    public Optional<Candidate> candidate(String label) {
        return candidates.stream().filter(one -> one.label().equals(label)).findFirst();
    }

    /** Whether it sweeps something and wants what earlier days taught of it. */
    public boolean wantsEarlierDays() {
        return goal.learnFromNotebook() && (timing.isPresent() || mixture.isPresent());
    }

    /**
     * What the operator says about the log, table {@code [log]}.
     *
     * @param hints how to read its columns
     * @param lambdaDelayS time from the cylinder to the lambda reading in s
     * @param correctedBy the standard that the logger has already corrected torque by
     * @param settings path of the settings file, relative to the plan
     */
    public record LogFacts(
            LogHints hints,
            OptionalDouble lambdaDelayS,
            Optional<CorrectionStandard> correctedBy,
            Optional<String> settings) {
        public static LogFacts defaults() {
            return new LogFacts(LogHints.none(), OptionalDouble.empty(), Optional.empty(), Optional.empty());
        }
    }

    /**
     * Words for the sheet, table {@code [sheet]}.
     *
     * @param customer whom the sheet is for
     * @param vehicle what was on the dyno
     * @param place where
     * @param operator who ran it
     * @param reference the number of the order
     */
    public record SheetFacts(
            Optional<String> customer,
            Optional<String> vehicle,
            Optional<String> place,
            Optional<String> operator,
            Optional<String> reference) {
        public static SheetFacts defaults() {
            return new SheetFacts(
                    Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
        }
    }

    /**
     * The correction standard and the weather where the log has none, table {@code [air]}.
     *
     * @param standard the standard that torque is corrected by
     * @param baro station pressure, absolute
     * @param air temperature of the air that the engine breathes
     * @param humidity relative humidity, 0 to 1
     */
    public record AirFacts(
            CorrectionStandard standard, Optional<Pressure> baro, Optional<Temperature> air, OptionalDouble humidity) {
        public static AirFacts defaults() {
            return new AirFacts(new NoCorrection(), Optional.empty(), Optional.empty(), OptionalDouble.empty());
        }
    }

    /**
     * One of the fuels or parts between which the day decides, table {@code [[candidate]]}; the first is the reference.
     *
     * @param label how log and settings call its pulls
     * @param fuel name of its fuel; empty where it runs on the plan's
     * @param note the operator's words, such as what is fitted
     * @param pricePerLitre what a litre of its fuel costs, in any currency that is one for all
     */
    public record Candidate(String label, Optional<String> fuel, Optional<String> note, OptionalDouble pricePerLitre) {}
}
