package org.nextpull.engine.bench;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.OptionalDouble;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Samples;
import org.nextpull.channel.SamplesBuilder;
import org.nextpull.engine.OperatingPoint;
import org.nextpull.finding.Outcome;
import org.nextpull.unit.Span;

/**
 * An engine on the simulated brake that runs on without an end: it idles, makes a pull when told, and comes down again. The pulls are
 * those that {@link Bench} makes from the same seed, however long the engine idled between them. Not for use by several threads.
 */
public final class RunningEngine {
    private static final double IDLE_RPM = 1100;
    private static final double IDLE_THROTTLE = 0.2;

    private final Bench bench;
    private final Noise idleNoise;
    private final Deque<Driver.Moment> ahead = new ArrayDeque<>();
    private final Sensors.State state = new Sensors.State(Sensors.loadAt(IDLE_THROTTLE));
    private PreparedPull latest;
    private Sensors sensors;
    private double rpm = IDLE_RPM;
    private double timeS;
    private double beganS;
    /** Speed in rpm that is held at full load. */
    private OptionalDouble held = OptionalDouble.empty();

    private RunningEngine(Bench bench, PreparedPull first, long seed) {
        this.bench = bench;
        this.latest = first;
        this.idleNoise = new Noise(~seed);
        this.sensors = first.sensors(idleNoise, state);
    }

    /**
     * Starts an engine, which idles from then on.
     *
     * @param bench where it runs, with nothing run on it yet
     * @param setting what is set first
     * @param program how it will be driven
     * @param seed of the scatter that is seen while it idles
     */
    public static Outcome<RunningEngine> start(Bench bench, Bench.Setting setting, Brake.Program program, long seed) {
        return bench.preview(setting, program).map(first -> new RunningEngine(bench, first, seed));
    }

    /** Time since the start in s. */
    public double timeS() {
        return timeS;
    }

    public boolean isPulling() {
        return !ahead.isEmpty();
    }

    /** Begins a pull, from whatever speed the engine runs at; gives its number, or says why it cannot be run. */
    public Outcome<Integer> pull(Bench.Setting setting, Brake.Program program) {
        return bench.prepare(setting, program).map(next -> {
            OperatingPoint.Surroundings before = latest.conditions().surroundings();
            OperatingPoint.Surroundings now = next.conditions().surroundings();
            state.oil.settlesHigherBy(now.oil().kelvins() - before.oil().kelvins());
            state.coolant.settlesHigherBy(
                    now.coolant().kelvins() - before.coolant().kelvins());
            latest = next;
            sensors = next.sensors(state);
            ahead.clear();
            ahead.addAll(next.drive(program, rpm));
            beganS = timeS;
            return next.conditions().number();
        });
    }

    public boolean isHolding() {
        return held.isPresent();
    }

    /** Goes to a speed in rpm and holds it at full load until the throttle is closed; told again, it sets the spark while it holds. */
    public Outcome<Integer> hold(Bench.Setting setting, double atRpm) {
        Brake.Program program = new Brake.Program.Steps(Span.of(atRpm, atRpm), 1, 1);
        Outcome<PreparedPull> prepared =
                isHolding() ? bench.again(latest, setting, program) : bench.prepare(setting, program);
        return prepared.map(next -> {
            latest = next;
            sensors = next.sensors(state);
            held = OptionalDouble.of(atRpm);
            ahead.clear();
            return next.conditions().number();
        });
    }

    /** Closes the throttle in the middle of a pull. */
    public void lift() {
        if (isPulling() || isHolding()) {
            held = OptionalDouble.empty();
            ahead.clear();
            sensors = latest.sensors(idleNoise, state);
        }
    }

    /** The next row as it is logged; no row where the logger drops one. */
    public Samples row() {
        SamplesBuilder builder = Samples.builder(
                bench.instruments().roles().stream().map(Channel::of).toList());
        boolean pulling = isPulling();
        Driver.Moment moment = pulling ? ahead.removeFirst() : isHolding() ? holding(held.getAsDouble()) : idle();
        sensors.row(builder, moment, pulling ? beganS : 0);
        rpm = moment.motion().rpm();
        timeS += 1 / bench.instruments().sampleHz();
        if (pulling && ahead.isEmpty()) {
            sensors = latest.sensors(idleNoise, state);
        }
        return builder.build();
    }

    /** On the way to the speed at part throttle, then there at full load. */
    private Driver.Moment holding(double atRpm) {
        double step = Driver.FALL_RPM_PER_S / bench.instruments().sampleHz();
        double off = atRpm - rpm;
        double next = Math.abs(off) <= step ? atRpm : rpm + Math.copySign(step, off);
        boolean there = off == 0;
        double rate = there ? 0 : Math.copySign(Driver.FALL_RPM_PER_S, off);
        return new Driver.Moment(timeS, new Driver.Moment.Motion(next, rate), there ? 1 : IDLE_THROTTLE, 0);
    }

    private Driver.Moment idle() {
        double step = Driver.FALL_RPM_PER_S / bench.instruments().sampleHz();
        boolean falls = rpm > IDLE_RPM;
        double next = falls ? Math.max(IDLE_RPM, rpm - step) : IDLE_RPM;
        double rate = falls ? -Driver.FALL_RPM_PER_S : 0;
        return new Driver.Moment(timeS, new Driver.Moment.Motion(next, rate), falls ? 0 : IDLE_THROTTLE, 0);
    }
}
