package org.nextpull.engine.bench;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.channel.SamplesBuilder;
import org.nextpull.channel.SparkMap;
import org.nextpull.engine.OperatingPoint;

/**
 * Turns the moments of one pull, or of the running between two, into rows as a logger would write them. Goes on from the state that the
 * sensors before it left.
 */
final class Sensors {
    private static final double TORQUE_LAG_S = 0.1;
    private static final double MIXTURE_LAG_S = 0.08;
    private static final double PART_LOAD_LAMBDA = State.PART_LOAD_LAMBDA;
    private static final double PART_LOAD_ADVANCE_DEG = 30;
    private static final double PART_LOAD_EXHAUST_K = State.PART_LOAD_EXHAUST_K;
    private static final double FULL_THROTTLE = 0.95;
    private static final double CLOSED = 0.08;
    private static final double DRAG_SHARE = 0.15;
    private static final double TORQUE_FLOOR_NM = 0.15;
    private static final double TEMPERATURE_NOISE_K = 0.1;
    private static final double EXHAUST_NOISE_K = 1.5;
    private static final double PRESSURE_NOISE_PA = 15;
    private static final double HUMIDITY_NOISE = 0.002;
    private static final double RADIANS_PER_RPM = Math.PI / 30;
    private static final double OIL_RELIEF_PA = 480e3;
    private static final double OIL_PA_PER_RPM = 130;
    private static final double OIL_PA_PER_K = 1200;
    private static final double OIL_WARM_K = 368.15;
    private static final double OIL_NOISE_PA = 4e3;
    private static final double FUEL_PA = 300e3;
    private static final double FUEL_NOISE_PA = 2e3;
    private static final double INJECTOR_KG_PER_S = 3.3e-3;
    private static final double VACUUM_SHARE = 0.35;
    private static final double LAMBDA_RIPPLE = 0.0015;
    private static final double LAMBDA_RIPPLE_RPM = 900;

    private final List<FullLoadCurve> curves;
    private final List<SparkMap> sparks;
    private final PreparedPull.Conditions conditions;
    private final Brake brake;
    private final Instruments instruments;
    private final Noise noise;
    private final State state;

    Sensors(
            List<FullLoadCurve> curves,
            List<SparkMap> sparks,
            PreparedPull.Conditions conditions,
            Brake brake,
            Instruments instruments,
            Noise noise,
            State state) {
        this.curves = List.copyOf(curves);
        this.sparks = List.copyOf(sparks);
        this.conditions = conditions;
        this.brake = brake;
        this.instruments = instruments;
        this.noise = noise;
        this.state = state;
    }

    /** Load of an engine whose throttle has just been let go of. */
    static double loadAt(double throttle) {
        return throttle - CLOSED;
    }

    /** Rows of the pull, times counted on from a time of the log. */
    Samples log(List<Driver.Moment> moments, double startS) {
        SamplesBuilder builder =
                Samples.builder(instruments.roles().stream().map(Channel::of).toList());
        for (Driver.Moment moment : moments) {
            row(builder, moment, startS);
        }
        return builder.build();
    }

    /** The next moment as a row, unless the logger drops it. */
    void row(SamplesBuilder builder, Driver.Moment moment, double startS) {
        follow(moment, 1 / instruments.sampleHz());
        if (noise.chance(instruments.imperfections().dropped())) {
            return;
        }
        builder.row(state.line++, conditions.label(), Optional.of(conditions.fuel()));
        for (int column = 0; column < instruments.roles().size(); column++) {
            OptionalDouble value = read(instruments.roles().get(column), moment, startS);
            if (value.isPresent()) {
                builder.set(column, value.getAsDouble());
            }
        }
    }

    private void follow(Driver.Moment moment, double interval) {
        double wanted = Math.max(0, (moment.throttle() - CLOSED) / (1 - CLOSED));
        state.load += (wanted - state.load) * (1 - Math.exp(-interval / TORQUE_LAG_S));
        double rpm = moment.motion().rpm();
        boolean full = moment.throttle() >= FULL_THROTTLE;
        double ripple = LAMBDA_RIPPLE * Math.sin(2 * Math.PI * rpm / LAMBDA_RIPPLE_RPM);
        double target = full ? conditions.lambda().value() + ripple : PART_LOAD_LAMBDA;
        state.mixture += (target - state.mixture) * (1 - Math.exp(-interval / MIXTURE_LAG_S));
        state.lambdas.addLast(state.mixture);
        double balance = PART_LOAD_EXHAUST_K + (curve(moment).exhaustKelvins(rpm) - PART_LOAD_EXHAUST_K) * state.load;
        state.exhaust += (balance - state.exhaust)
                * (1 - Math.exp(-interval / instruments.imperfections().thermocoupleS()));
        state.oil.follow(full, interval);
        state.coolant.follow(full, interval);
    }

    private FullLoadCurve curve(Driver.Moment moment) {
        return curves.get(moment.stage());
    }

    private OptionalDouble read(Role role, Driver.Moment moment, double startS) {
        OperatingPoint.Surroundings around = conditions.surroundings();
        double rpm = moment.motion().rpm();
        return switch (role) {
            case TIME -> OptionalDouble.of(startS + moment.timeS());
            case ENGINE_SPEED -> OptionalDouble.of(rpm + noise.normal(instruments.speed()));
            case ROLLER_SPEED ->
                brake.roller().isEmpty()
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(
                                rpm / brake.roller().get().engineRevPerRollerRev() + noise.normal(instruments.speed()));
            case TORQUE -> OptionalDouble.of(torque(moment));
            case POWER -> OptionalDouble.of(torque(moment) * rpm * RADIANS_PER_RPM);
            case THROTTLE -> OptionalDouble.of(Math.max(0, Math.min(1, moment.throttle() + noise.normal(0.002))));
            case LAMBDA -> lambda();
            case ADVANCE -> OptionalDouble.of(advance(moment));
            case KNOCK_EVENTS -> OptionalDouble.of(knockEvents(moment));
            case KNOCK_LEVEL ->
                OptionalDouble.of(
                        KnockSensor.level(rpm, loaded(moment) * curve(moment).knockIntegral(rpm), noise));
            case EXHAUST_TEMPERATURE -> OptionalDouble.of(state.exhaust + noise.normal(EXHAUST_NOISE_K));
            case OIL_TEMPERATURE -> temperature(around.oil().kelvins() + state.oil.above());
            case COOLANT_TEMPERATURE -> temperature(around.coolant().kelvins() + state.coolant.above());
            case INLET_AIR_TEMPERATURE -> temperature(around.air().temperature().kelvins());
            case BAROMETER -> OptionalDouble.of(around.air().barometer().pascals() + noise.normal(PRESSURE_NOISE_PA));
            case HUMIDITY -> OptionalDouble.of(around.air().relativeHumidity() + noise.normal(HUMIDITY_NOISE));
            case FUEL_FLOW ->
                OptionalDouble.of(Math.max(0.05, state.load) * curve(moment).fuelFlow(rpm));
            case ORDER, RUN -> OptionalDouble.of(conditions.number());
            case OIL_PRESSURE ->
                OptionalDouble.of(Math.min(OIL_RELIEF_PA, OIL_PA_PER_RPM * rpm)
                        - OIL_PA_PER_K * (around.oil().kelvins() - OIL_WARM_K)
                        + noise.normal(OIL_NOISE_PA));
            case FUEL_PRESSURE -> OptionalDouble.of(FUEL_PA + noise.normal(FUEL_NOISE_PA));
            case INJECTOR_DUTY -> OptionalDouble.of(injectorDuty(moment) + noise.normal(HUMIDITY_NOISE));
            case MANIFOLD_PRESSURE -> OptionalDouble.of(manifold(moment) + noise.normal(PRESSURE_NOISE_PA));
            default -> OptionalDouble.empty();
        };
    }

    private OptionalDouble temperature(double kelvins) {
        return OptionalDouble.of(kelvins + noise.normal(TEMPERATURE_NOISE_K));
    }

    /** Torque at the brake: what the engine makes, less what its inertia takes up unless the log adds that. */
    private double torque(Driver.Moment moment) {
        double rpm = moment.motion().rpm();
        double full = curve(moment).torque(rpm) * conditions.factorAt(rpm);
        double made = full * state.load - DRAG_SHARE * full * (1 - state.load);
        double taken = brake.inertiaInLog()
                ? 0
                : brake.engineInertia() * moment.motion().rpmPerSecond() * RADIANS_PER_RPM;
        return made - taken + noise.normal(TORQUE_FLOOR_NM + instruments.torque() * Math.abs(full));
    }

    /** A closed throttle leaves a vacuum behind it. */
    private double manifold(Driver.Moment moment) {
        double full = curve(moment).manifoldPascals(moment.motion().rpm());
        return full * (VACUUM_SHARE + (1 - VACUUM_SHARE) * Math.min(1, state.load));
    }

    /** Injectors sized so that the fastest, fullest cylinder needs most of its cycle. */
    private double injectorDuty(Driver.Moment moment) {
        double flow = Math.max(0.05, state.load)
                * curve(moment).fuelFlow(moment.motion().rpm());
        return flow / (conditions.cylinders() * INJECTOR_KG_PER_S);
    }

    private OptionalDouble lambda() {
        int rows = (int) Math.round(instruments.lambda().delayS() * instruments.sampleHz());
        while (state.lambdas.size() > rows + 1) {
            state.lambdas.removeFirst();
        }
        double seen = state.lambdas.size() <= rows ? PART_LOAD_LAMBDA : state.lambdas.getFirst();
        return OptionalDouble.of(seen + noise.normal(instruments.lambda().noise()));
    }

    private double advance(Driver.Moment moment) {
        return moment.throttle() >= FULL_THROTTLE
                ? sparks.get(moment.stage()).degAt(moment.motion().rpm())
                : PART_LOAD_ADVANCE_DEG;
    }

    private double knockEvents(Driver.Moment moment) {
        double cycles = moment.motion().rpm() / 120 * conditions.cylinders() / instruments.sampleHz();
        double integral =
                loaded(moment) * curve(moment).knockIntegral(moment.motion().rpm());
        return noise.successes(cycles, KnockSensor.probability(integral));
    }

    /** Part load does not knock. */
    private double loaded(Driver.Moment moment) {
        return moment.throttle() >= FULL_THROTTLE ? state.load : 0;
    }

    /** What the sensors of a running engine have in them: it lasts from one pull to the next. Written by {@link Sensors} alone. */
    static final class State {
        static final double PART_LOAD_LAMBDA = 1.0;
        static final double PART_LOAD_EXHAUST_K = 870;

        private static final double OIL_RISE_K_PER_S = 0.25;
        private static final double COOLANT_RISE_K_PER_S = 0.15;

        final Deque<Double> lambdas = new ArrayDeque<>();
        final Warming oil = new Warming(OIL_RISE_K_PER_S);
        final Warming coolant = new Warming(COOLANT_RISE_K_PER_S);
        double load;
        double mixture = PART_LOAD_LAMBDA;
        double exhaust = PART_LOAD_EXHAUST_K;
        long line = 1;

        /** An engine that runs at part throttle. */
        State(double load) {
            this.load = load;
        }

        /** How far a fluid is above the temperature that it settles at between pulls. */
        static final class Warming {
            private static final double COOLING_S = 40;

            private final double risePerS;
            private double kelvins;

            private Warming(double risePerS) {
                this.risePerS = risePerS;
            }

            double above() {
                return kelvins;
            }

            void follow(boolean fullLoad, double seconds) {
                kelvins += fullLoad ? risePerS * seconds : kelvins * Math.expm1(-seconds / COOLING_S);
            }

            /** The temperature that it settles at has moved, the fluid has not. */
            void settlesHigherBy(double change) {
                kelvins -= change;
            }
        }
    }
}
