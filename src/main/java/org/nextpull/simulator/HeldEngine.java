package org.nextpull.simulator;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.advice.HoldNow;
import org.nextpull.alarm.AlarmWatch;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.Samples;
import org.nextpull.channel.SparkMap;
import org.nextpull.engine.bench.RunningEngine;
import org.nextpull.finding.Outcome;
import org.nextpull.plan.Limits;
import org.nextpull.session.HoldGuide;
import org.nextpull.unit.Advance;

/**
 * The model engine at the held speeds of a plan, led by the guide of a running session. It runs while somebody would wait for the next
 * thing to do, and stands still while that is read and typed. Not for use by several threads.
 */
final class HeldEngine {
    /** What an operator takes to close the throttle. */
    private static final double REACTION_S = 1;
    /** So much longer than the longest settling nothing new is waited for. */
    private static final double SPARE_S = 2;
    /** From idle to any held speed. */
    private static final double LONGEST_WAY_S = 20;
    /** A throttle closed for so long ends the stretch in the log. */
    private static final double LEAST_IDLE_S = 3;

    private final SimulatedEngine rig;
    private final RunningEngine engine;
    private final HoldGuide guide;
    private AlarmWatch alarms;
    private final List<Samples> rows = new ArrayList<>();

    private HeldEngine(SimulatedEngine rig, RunningEngine engine, HoldGuide guide) {
        this.rig = rig;
        this.engine = engine;
        this.guide = guide;
        this.alarms = new AlarmWatch(AlarmWatch.Rules.of(rig.plan()));
    }

    /** An engine to hold, where the plan asks for it and its log shows what the guide goes by; idling and warm. */
    static Optional<HeldEngine> of(SimulatedEngine rig) {
        return HoldGuide.of(rig.plan())
                .filter(guide ->
                        rig.kit().logsAdvance() && rig.kit().brake().roller().isEmpty())
                .flatMap(guide -> RunningEngine.start(
                                rig.bench(),
                                rig.benchSetting(rig.startSetting(), Optional.empty()),
                                rig.kit().program(),
                                rig.benchSeed())
                        .value()
                        .map(engine -> new HeldEngine(rig, engine, guide)));
    }

    HoldNow now() {
        return guide.now();
    }

    /**
     * Holds the speed of the moment at an advance until there is something new to do; at a sign to close the throttle it is closed.
     *
     * @return what was said last: the sign, the next advance, or what still holds; findings where the engine cannot run so
     */
    Outcome<HoldNow> hold(Advance advance) {
        HoldNow before = now();
        EngineSetting setting = EngineSetting.of(SparkMap.flat(advance), Optional.empty());
        return engine.hold(rig.benchSetting(setting, Optional.empty()), before.rpm())
                .map(number -> untilNews(before));
    }

    private HoldNow untilNews(HoldNow before) {
        double wayUntilS = engine.timeS() + LONGEST_WAY_S;
        while (now().leftS().isEmpty() && engine.timeS() < wayUntilS) {
            row();
        }
        double untilS = engine.timeS()
                + rig.plan().pull().settleS()
                + 2 * rig.plan().pull().holdS()
                + SPARE_S;
        while (!isNews(before) && engine.timeS() < untilS) {
            row();
        }
        HoldNow said = now();
        if (said.step().isClose()) {
            run(REACTION_S);
            engine.lift();
            run(Math.max(LEAST_IDLE_S, rig.plan().start().coolDownS().orElse(0)));
        }
        return said;
    }

    private boolean isNews(HoldNow before) {
        return now().step().isClose() || now().plateaus() > before.plateaus();
    }

    /** A pull over the band, with the cool-down after it. */
    Outcome<Integer> pull(EngineSetting setting) {
        return engine.pull(
                        rig.benchSetting(setting, Optional.empty()), rig.kit().program())
                .map(number -> {
                    while (engine.isPulling()) {
                        row();
                    }
                    run(Math.max(LEAST_IDLE_S, rig.plan().start().coolDownS().orElse(0)));
                    return number;
                });
    }

    /** Limits hold from now on. */
    void limits(Limits now) {
        guide.limits(now);
        alarms = alarms.withLimits(now);
    }

    /** What was logged since the last time. */
    List<Samples> taken() {
        List<Samples> logged = List.copyOf(rows);
        rows.clear();
        return logged;
    }

    private void run(double seconds) {
        double until = engine.timeS() + seconds;
        while (engine.timeS() < until) {
            row();
        }
    }

    private void row() {
        Samples row = engine.row();
        rows.add(row);
        guide.take(row, engine.timeS());
        alarms.take(row);
        if (!alarms.sounding().isEmpty()) {
            guide.limit();
        }
    }
}
