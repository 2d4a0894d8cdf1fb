package org.nextpull.simulator;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.Samples;
import org.nextpull.engine.bench.RunningEngine;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.intake.serial.Port;
import org.nextpull.plan.SweepPlan;

/**
 * The model engine on wires, as a logger would send it: it idles, runs a pull when told, and idles again. It lives on a thread of its own
 * from {@link #start} until it is told to end or a port goes away. {@link #tell} and {@link #stop} may be called from any thread.
 */
public final class ServedEngine {
    private static final double NS_A_SECOND = 1e9;
    /** A machine that was asleep does not send all of that time at once. */
    private static final double MOST_BEHIND_NS = 1e9;

    private final SimulatedEngine rig;
    private final RunningEngine engine;
    private final List<ServedWire> wires;
    private final Listener listener;
    private final double speed;
    private final BlockingQueue<ServeCommand> told = new LinkedBlockingQueue<>();
    private final Deque<ServeCommand> later = new ArrayDeque<>();
    private final CountDownLatch ended = new CountDownLatch(1);
    private volatile boolean over;

    private volatile EngineSetting setting;
    private int pulls;
    private double heldRpm;
    private int knockingPulls;
    private Optional<SimulatedEngine.KnockCount> knock = Optional.empty();
    private Optional<ServeCommand.Trouble> trouble = Optional.empty();
    private double troubleUntilS;
    private double idleUntilS;

    /** Takes what happens, on the engine's own thread or on that of a port. */
    public interface Listener {
        /** What is set now. */
        void isSet(EngineSetting setting);

        void pullBegan(int number, EngineSetting setting);

        /** A pull ended; cut short where somebody lifted off. */
        void pullEnded(int number, boolean cutShort);

        /** Something is wrong with what was told, or with a port. */
        void said(Finding finding);
    }

    private ServedEngine(Ready ready, List<ServedWire> wires, double speed, Listener listener) {
        this.rig = ready.rig();
        this.engine = ready.engine();
        this.wires = wires;
        this.speed = speed;
        this.listener = listener;
        this.setting = rig.startSetting();
    }

    /** An engine that can run, and its wires before their ports are open. */
    private record Ready(SimulatedEngine rig, RunningEngine engine, ServedPorts ports) {}

    /** Starts the engine of an order on its ports, or says which of them cannot be had. */
    public static Outcome<ServedEngine> start(ServeOrder order, Port.Opener opener, Listener listener) {
        return SimulatedEngine.of(order.plan(), order.seed())
                .then(rig -> ServedPorts.of(order, rig.kit()).then(ports -> ready(rig, ports)))
                .then(ready -> {
                    Ports said = new Ports(listener);
                    double hz = ready.rig().kit().instruments().sampleHz();
                    return ready.ports().open(opener, hz, said::said).map(wires -> {
                        ServedEngine served = new ServedEngine(ready, wires, order.speed(), listener);
                        said.engine = Optional.of(served);
                        served.begin();
                        return served;
                    });
                });
    }

    private static Outcome<Ready> ready(SimulatedEngine rig, ServedPorts ports) {
        SimulatedEngine logging = rig.withKit(rig.kit().logging(ports.roles()));
        return RunningEngine.start(
                        logging.bench(),
                        logging.benchSetting(logging.startSetting(), Optional.empty()),
                        logging.kit().program(),
                        logging.benchSeed())
                .map(engine -> new Ready(logging, engine, ports));
    }

    /** Hands on what the ports say; a port that went away ends the engine. */
    private static final class Ports {
        private final Listener listener;
        private volatile Optional<ServedEngine> engine = Optional.empty();

        private Ports(Listener listener) {
            this.listener = listener;
        }

        private void said(Finding finding) {
            listener.said(finding);
            if (finding.code() == FindingCode.RIG_PORT_GONE) {
                engine.ifPresent(ServedEngine::stop);
            }
        }
    }

    private void begin() {
        wires.forEach(ServedWire::begin);
        Thread thread = new Thread(this::run, "model engine");
        thread.setDaemon(true);
        thread.start();
    }

    public SweepPlan plan() {
        return rig.plan();
    }

    /** What is set now. */
    public EngineSetting setting() {
        return setting;
    }

    /** Tells the engine something. */
    public void tell(ServeCommand command) {
        told.add(command);
    }

    /** Ends at once, in the middle of a pull if there is one. */
    public void stop() {
        over = true;
        told.add(new ServeCommand.End());
    }

    /** Waits until the engine has ended and all ports are closed. */
    public void awaitEnd() throws InterruptedException {
        ended.await();
    }

    /** The truth, beside what is set at the end; after {@link #awaitEnd}. Takes a second or two. */
    public Debrief debrief() {
        return Debrief.of(rig, pulls, knockingPulls, pulls == 0 ? Optional.empty() : Optional.of(setting));
    }

    /** The same as text in TOML. */
    public String truth() {
        return DayTruth.text(rig, debrief(), Map.of());
    }

    private void run() {
        try {
            double originNs = System.nanoTime();
            while (!over) {
                double behindNs = System.nanoTime() - originNs - engine.timeS() / speed * NS_A_SECOND;
                originNs += Math.max(0, behindNs - MOST_BEHIND_NS);
                Optional<ServeCommand> command =
                        Optional.ofNullable(told.poll((long) Math.max(0, -behindNs), TimeUnit.NANOSECONDS));
                if (command.isPresent()) {
                    hear(command.get());
                } else {
                    row();
                }
                goOn();
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        } finally {
            wires.forEach(ServedWire::close);
            ended.countDown();
        }
    }

    private void hear(ServeCommand command) {
        if (command instanceof ServeCommand.Lift) {
            lift();
        } else if (command instanceof ServeCommand.Trouble practised) {
            trouble = Optional.of(practised);
            troubleUntilS = engine.timeS() + practised.seconds();
        } else {
            later.add(command);
        }
    }

    private void lift() {
        if (engine.isPulling() || engine.isHolding()) {
            engine.lift();
            ended(true);
        }
    }

    /** Does what was told earlier, as far as its time has come. */
    private void goOn() {
        while (!over && !engine.isPulling() && engine.timeS() >= idleUntilS && !later.isEmpty()) {
            ServeCommand next = later.removeFirst();
            if (next instanceof ServeCommand.Set set) {
                set(set.setting());
            } else if (next instanceof ServeCommand.Pull) {
                if (engine.isHolding()) {
                    lift();
                }
                pull();
            } else if (next instanceof ServeCommand.Hold hold) {
                heldRpm = hold.rpm();
                hold();
            } else if (next instanceof ServeCommand.Idle idle) {
                idleUntilS = engine.timeS() + idle.seconds();
            } else {
                over = true;
            }
        }
    }

    private void set(EngineSetting typed) {
        EngineSetting whole = typed.orElse(setting);
        List<Finding> outside = PlanSpan.check(rig.plan(), whole);
        if (outside.isEmpty()) {
            setting = whole;
            listener.isSet(whole);
            if (engine.isHolding()) {
                hold();
            }
        } else {
            outside.forEach(listener::said);
        }
    }

    private void pull() {
        Outcome<Integer> began = engine.pull(
                rig.benchSetting(setting, Optional.empty()), rig.kit().program());
        began.findings().forEach(listener::said);
        began.value().ifPresent(this::began);
    }

    private void hold() {
        boolean begins = !engine.isHolding();
        Outcome<Integer> held = engine.hold(rig.benchSetting(setting, Optional.empty()), heldRpm);
        held.findings().forEach(listener::said);
        held.value().filter(number -> begins).ifPresent(this::began);
    }

    private void began(int number) {
        pulls = number;
        knock = Optional.of(new SimulatedEngine.KnockCount(rig));
        listener.pullBegan(number, setting);
    }

    private void row() {
        Samples row = engine.row();
        knock.ifPresent(count -> count.add(row));
        boolean troubled = engine.timeS() < troubleUntilS;
        boolean silent = troubled && isTrouble(ServeCommand.Trouble.Kind.SILENCE);
        boolean spoilt = troubled && isTrouble(ServeCommand.Trouble.Kind.GARBAGE);
        if (!silent) {
            wires.forEach(wire -> wire.send(row, engine.timeS(), spoilt).ifPresent(listener::said));
        }
        if (knock.isPresent() && !engine.isPulling() && !engine.isHolding()) {
            ended(false);
        }
    }

    private boolean isTrouble(ServeCommand.Trouble.Kind kind) {
        return trouble.map(practised -> practised.kind() == kind).orElse(false);
    }

    private void ended(boolean cutShort) {
        if (knock.map(SimulatedEngine.KnockCount::isHeard).orElse(false)) {
            knockingPulls++;
        }
        knock = Optional.empty();
        listener.pullEnded(pulls, cutShort);
    }
}
