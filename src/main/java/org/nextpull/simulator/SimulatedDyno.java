package org.nextpull.simulator;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.nextpull.channel.Role;
import org.nextpull.engine.bench.Brake;
import org.nextpull.engine.bench.Instruments;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.plan.DynoFacts;
import org.nextpull.plan.PullFacts;
import org.nextpull.plan.SweepPlan;
import org.nextpull.unit.Span;

/**
 * The dyno that a plan describes: brake or roller, how it is driven, and what it logs.
 *
 * @param brake what takes up the torque
 * @param program how a pull is driven
 * @param instruments what is logged
 */
record SimulatedDyno(Brake brake, Brake.Program program, Instruments instruments) {
    static final List<Role> BRAKE_ROLES = List.of(
            Role.TIME,
            Role.ENGINE_SPEED,
            Role.TORQUE,
            Role.THROTTLE,
            Role.LAMBDA,
            Role.ADVANCE,
            Role.KNOCK_EVENTS,
            Role.EXHAUST_TEMPERATURE,
            Role.COOLANT_TEMPERATURE,
            Role.OIL_TEMPERATURE,
            Role.OIL_PRESSURE,
            Role.FUEL_PRESSURE,
            Role.INLET_AIR_TEMPERATURE,
            Role.BAROMETER,
            Role.HUMIDITY);
    private static final double BELOW_RPM = 300;
    private static final double LEAST_SHARE = 0.8;
    private static final double ABOVE_RPM = 250;
    private static final double BELOW_LIMIT_RPM = 100;
    private static final double RATE_RPM_PER_S = 300;
    private static final double STEP_RPM = 250;
    private static final double STEP_SPARE_S = 2.5;
    private static final double SAMPLE_HZ = 20;
    private static final double ROLLER_SAMPLE_HZ = 40;
    /** Slower than this no pull is found, and faster no brake logs. */
    private static final Span SAMPLE_HZ_RANGE = Span.of(5, 500);

    private static final double ROLLER_NOISE_RPM = 0.15;
    private static final double LAMBDA_DELAY_S = 0.15;
    private static final Brake.Losses GEARS_AND_TYRES = new Brake.Losses(0.09, 14);

    static Outcome<SimulatedDyno> of(SweepPlan plan, Span band) {
        DynoFacts dyno = plan.dyno();
        boolean inertia = dyno.kind() == DynoFacts.Kind.CHASSIS_INERTIA;
        double hz = plan.log().hints().sampleHz().orElse(inertia ? ROLLER_SAMPLE_HZ : SAMPLE_HZ);
        if (!SAMPLE_HZ_RANGE.contains(hz)) {
            return cannot("[log] sample_hz", String.valueOf(hz));
        }
        if (!inertia && dyno.torqueAt() == DynoFacts.Shaft.ROLLER) {
            return cannot("[dyno] torque_at", dyno.torqueAt().id());
        }
        Outcome<Brake> brake = inertia ? roller(dyno) : Outcome.of(brake(dyno));
        double delay = plan.log().lambdaDelayS().orElse(LAMBDA_DELAY_S);
        return brake.map(found -> new SimulatedDyno(
                found,
                program(plan, range(plan, band), inertia),
                inertia ? rollerInstruments(hz, delay) : brakeInstruments(plan, hz, delay)));
    }

    /** The same dyno, with instruments for these as well. */
    SimulatedDyno logging(Set<Role> more) {
        Set<Role> roles = new LinkedHashSet<>(instruments.roles());
        roles.addAll(more);
        return new SimulatedDyno(brake, program, instruments.logging(List.copyOf(roles)));
    }

    /** Whether there can be an instrument for it: a roller has nothing that torque could be read off. */
    boolean measures(Role role) {
        return switch (role) {
            case TORQUE, POWER -> brake.roller().isEmpty();
            case ROLLER_SPEED -> brake.roller().isPresent();
            case KNOCK_LEVEL, INJECTOR_DUTY, FUEL_FLOW, MANIFOLD_PRESSURE, RUN, ORDER -> true;
            default -> BRAKE_ROLES.contains(role);
        };
    }

    /** Whether the log itself shows what timing was set. */
    boolean logsAdvance() {
        return instruments.logs(Role.ADVANCE);
    }

    private static Outcome<SimulatedDyno> cannot(String key, String value) {
        return Outcome.failed(Finding.error(
                FindingCode.RIG_CANNOT,
                Place.nowhere().withKey(key),
                Detail.of("name", key),
                Detail.of("value", value)));
    }

    private static Brake brake(DynoFacts dyno) {
        boolean inLog = dyno.inertia().inLog() != DynoFacts.InertiaInLog.NO;
        return Brake.engineBrake(dyno.inertia().engineSideKgM2().orElse(0), inLog);
    }

    private static Outcome<Brake> roller(DynoFacts dyno) {
        OptionalDouble inertia = dyno.inertia().rollerKgM2();
        OptionalDouble ratio = dyno.gearing().engineRevPerRollerRev();
        if (inertia.isEmpty() || ratio.isEmpty()) {
            return Outcome.failed(Finding.error(
                    FindingCode.RIG_NEEDS,
                    Place.nowhere(),
                    Detail.of("name", "[dyno] roller_inertia_kg_m2, engine_rev_per_roller_rev")));
        }
        Brake.Roller roller = new Brake.Roller(inertia.getAsDouble(), ratio.getAsDouble(), GEARS_AND_TYRES);
        return Outcome.of(new Brake(dyno.inertia().engineSideKgM2().orElse(0), false, Optional.of(roller)));
    }

    private static Span range(SweepPlan plan, Span band) {
        double most = plan.limits().mostRpm().orElse(Double.POSITIVE_INFINITY) - BELOW_LIMIT_RPM;
        double high = Math.max(band.high(), Math.min(band.high() + ABOVE_RPM, most));
        return Span.of(Math.max(band.low() * LEAST_SHARE, band.low() - BELOW_RPM), high);
    }

    private static Brake.Program program(SweepPlan plan, Span range, boolean inertia) {
        if (inertia) {
            return new Brake.Program.RollerRun(range);
        }
        return plan.pull().kind() == PullFacts.Kind.STEPS
                ? new Brake.Program.Steps(range, STEP_RPM, plan.pull().holdS() + STEP_SPARE_S)
                : new Brake.Program.Acceleration(range, RATE_RPM_PER_S);
    }

    private static Instruments brakeInstruments(SweepPlan plan, double hz, double delay) {
        List<Role> roles = new ArrayList<>(BRAKE_ROLES);
        if (plan.limits().injectorDutyMost().isPresent()) {
            roles.add(Role.INJECTOR_DUTY);
        }
        if (plan.engine().isBoosted()) {
            roles.add(Role.MANIFOLD_PRESSURE);
        }
        return Instruments.usual(hz, roles).withLambdaDelay(delay);
    }

    private static Instruments rollerInstruments(double hz, double delay) {
        return Instruments.usual(hz, List.of(Role.TIME, Role.ROLLER_SPEED, Role.LAMBDA))
                .withLambdaDelay(delay)
                .withSpeedNoise(ROLLER_NOISE_RPM);
    }
}
