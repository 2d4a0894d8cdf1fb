package org.nextpull.session;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.advice.HoldNow;
import org.nextpull.advice.HoldPlanner;
import org.nextpull.advice.PlannerRules;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.plan.Limits;
import org.nextpull.plan.PullFacts;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.TimingPlan;

/**
 * Leads through held speeds while the engine runs: sees that torque has settled at an advance, and says the next one, the next speed, or
 * to close the throttle. A plan asks for it with {@code kind = "hold"} and {@code hold_speeds}. Knows only what the rows show.
 */
public final class HoldGuide {
    private static final Channel TIME = Channel.of(Role.TIME);
    private static final Channel SPEED = Channel.of(Role.ENGINE_SPEED);
    private static final Channel TORQUE = Channel.of(Role.TORQUE);
    private static final Channel ADVANCE = Channel.of(Role.ADVANCE);
    private static final Channel THROTTLE = Channel.of(Role.THROTTLE);
    private static final Channel KNOCK = Channel.of(Role.KNOCK_EVENTS);
    private static final Channel EXHAUST = Channel.of(Role.EXHAUST_TEMPERATURE);

    private static final double USUAL_MOST_S = 45;
    private static final double NEAR_RPM = 75;
    /** Halves of a plateau may differ by that much, in percent: less is the noise of its mean and slow warming. */
    private static final double SETTLED_PERCENT = 0.25;
    /** So long after the advance changed nothing counts. */
    private static final double FLINCH_S = 0.5;
    /** A throttle that was closed for so long is closed. */
    private static final double CLOSED_S = 0.5;
    /** The exhaust is judged by where it will be after that time. */
    private static final double AHEAD_S = 3;

    /** Before, a thermocouple only tells that the load came on. */
    private static final double THERMOCOUPLE_S = 6;

    private final SweepPlan plan;
    private final TimingPlan timing;
    private final List<Double> speeds;
    private final HoldPlanner planner;
    private final double mostS;
    private Limits limits;
    private final double[] bansDeg;

    private final Deque<Moment> moments = new ArrayDeque<>();
    private List<HoldPlanner.Plateau> plateaus = new ArrayList<>();
    private int speed;
    private HoldNow.Step step = HoldNow.Step.GO;
    private OptionalDouble set = OptionalDouble.empty();
    private OptionalDouble loadedAtS = OptionalDouble.empty();
    private double lastLoadedS = Double.NEGATIVE_INFINITY;
    private double nowS;
    private double rpm;
    private double throttle;
    private OptionalDouble advance = OptionalDouble.empty();
    private OptionalDouble exhaust = OptionalDouble.empty();
    private double exhaustAtS;
    private double exhaustRate;

    private record Moment(double atS, double torqueNm) {}

    private HoldGuide(SweepPlan plan, TimingPlan timing) {
        this.plan = plan;
        this.timing = timing;
        PullFacts.HeldSpeeds held = plan.pull().held();
        this.speeds = held.speedsRpm();
        this.limits = plan.limits();
        this.mostS = held.mostS().orElse(USUAL_MOST_S);
        this.planner = new HoldPlanner(new PlannerRules.Spark(
                timing.least().deg(),
                timing.most().deg(),
                timing.step().largest(),
                timing.step().resolution(),
                plan.limits().knockMarginDeg()));
        this.bansDeg = new double[speeds.size()];
        Arrays.fill(bansDeg, Double.POSITIVE_INFINITY);
        this.set = startAt(0);
    }

    /** A guide, where the plan holds speeds and steps the spark. */
    public static Optional<HoldGuide> of(SweepPlan plan) {
        boolean holds = plan.pull().kind() == PullFacts.Kind.HOLD
                && !plan.pull().held().speedsRpm().isEmpty();
        return plan.timing().filter(timing -> holds).map(timing -> new HoldGuide(plan, timing));
    }

    /** What to do now. */
    public HoldNow now() {
        int at = Math.min(speed, speeds.size() - 1);
        OptionalDouble left = loadedAtS.isPresent()
                ? OptionalDouble.of(Math.max(0, mostS - (nowS - loadedAtS.getAsDouble())))
                : loadedAtS;
        return new HoldNow(step, at + 1, speeds.size(), speeds.get(at), set, left, plateaus.size());
    }

    /** A limit is passed. */
    public void limit() {
        if (loadedAtS.isPresent() && !step.isClose()) {
            close(HoldNow.Step.CLOSE_LIMIT);
        }
    }

    /** Data stopped: what is at load is not watched, and what comes of it later is no whole stretch. */
    public void cut() {
        if (loadedAtS.isPresent() && !step.isClose()) {
            close(HoldNow.Step.CLOSE_CUT);
        }
    }

    /** Limits hold from now on. */
    public void limits(Limits now) {
        limits = now;
    }

    /** Takes rows as they come; a source without a clock is read by the session's. */
    public void take(Samples samples, double arrivedS) {
        for (int row = 0; row < samples.rows() && speed < speeds.size(); row++) {
            nowS = samples.find(TIME, row).orElse(arrivedS);
            rpm = samples.find(SPEED, row).orElse(rpm);
            throttle = samples.find(THROTTLE, row).orElse(throttle);
            OptionalDouble deg = samples.find(ADVANCE, row);
            if (deg.isPresent()) {
                advance = deg;
            }
            warm(samples.find(EXHAUST, row));
            load(throttle >= plan.pull().fullLoad());
            if (loadedAtS.isPresent() && !step.isClose()) {
                row(samples.find(TORQUE, row), samples.find(KNOCK, row).orElse(0));
            }
        }
    }

    private void warm(OptionalDouble kelvins) {
        if (kelvins.isPresent()) {
            if (exhaust.isPresent() && nowS > exhaustAtS) {
                double rate = (kelvins.getAsDouble() - exhaust.getAsDouble()) / (nowS - exhaustAtS);
                exhaustRate += (rate - exhaustRate) * Math.min(1, nowS - exhaustAtS);
            }
            exhaust = kelvins;
            exhaustAtS = nowS;
        }
    }

    private void load(boolean loaded) {
        if (loaded) {
            lastLoadedS = nowS;
            boolean near = Math.abs(rpm - speeds.get(speed)) <= NEAR_RPM;
            if (loadedAtS.isEmpty() && near && !step.isClose()) {
                loadedAtS = OptionalDouble.of(nowS);
                step = HoldNow.Step.HOLD;
            }
        } else if (nowS - lastLoadedS > CLOSED_S && (loadedAtS.isPresent() || step.isClose())) {
            loadedAtS = OptionalDouble.empty();
            moments.clear();
            if (step.isClose() && step != HoldNow.Step.CLOSE_CUT) {
                speed++;
                plateaus = new ArrayList<>();
                step = speed < speeds.size() ? HoldNow.Step.GO : HoldNow.Step.PROVE;
                set = speed < speeds.size() ? startAt(speed) : OptionalDouble.empty();
            } else {
                step = HoldNow.Step.GO;
            }
        }
    }

    private void row(OptionalDouble torque, double knocks) {
        if (knocks > 0) {
            double deg = advance.orElse(timing.least().deg()) - limits.knockMarginDeg();
            for (int other = 0; other < bansDeg.length; other++) {
                boolean everywhere = timing.sets() != TimingPlan.Sets.MAP;
                bansDeg[other] = everywhere || other == speed ? Math.min(bansDeg[other], deg) : bansDeg[other];
            }
            close(HoldNow.Step.CLOSE_KNOCK);
        } else if (isTooHotSoon()) {
            close(HoldNow.Step.CLOSE_LIMIT);
        } else if (nowS - loadedAtS.orElse(nowS) >= mostS) {
            close(HoldNow.Step.CLOSE_TIME);
        } else if (torque.isPresent() && torque.getAsDouble() > 0 && advance.isPresent()) {
            plateau(torque.getAsDouble());
        }
    }

    private boolean isTooHotSoon() {
        return exhaust.isPresent()
                && nowS - loadedAtS.orElse(nowS) > THERMOCOUPLE_S
                && limits.most()
                        .exhaust()
                        .filter(most ->
                                exhaustRate > 0 && exhaust.getAsDouble() + AHEAD_S * exhaustRate >= most.kelvins())
                        .isPresent();
    }

    private void plateau(double torque) {
        double deg = advance.orElseThrow();
        boolean there = Math.abs(rpm - speeds.get(speed)) <= NEAR_RPM
                && Math.abs(deg - set.orElse(deg)) <= timing.step().resolution() / 2 + 1e-6;
        if (!there) {
            moments.clear();
            return;
        }
        step = HoldNow.Step.HOLD;
        moments.addLast(new Moment(nowS, torque));
        double holdS = plan.pull().holdS();
        double spanS = nowS - moments.getFirst().atS();
        boolean isLong = spanS >= FLINCH_S + holdS;
        if (isLong && (isSettled(holdS) || spanS >= plan.pull().settleS() + 2 * holdS)) {
            plateaus.add(new HoldPlanner.Plateau(deg, 100 * Math.log(mean(nowS - holdS, nowS))));
            moments.clear();
            next();
        }
    }

    private boolean isSettled(double holdS) {
        double early = mean(nowS - holdS, nowS - holdS / 2);
        double late = mean(nowS - holdS / 2, nowS);
        return Math.abs(100 * Math.log(late / early)) <= SETTLED_PERCENT;
    }

    private double mean(double fromS, double toS) {
        return moments.stream()
                .filter(moment -> moment.atS() >= fromS && moment.atS() <= toS)
                .mapToDouble(Moment::torqueNm)
                .average()
                .orElse(1);
    }

    private void next() {
        HoldPlanner.HoldStep wanted = planner.next(plateaus, bansDeg[speed], false);
        if (wanted instanceof HoldPlanner.HoldStep.Set next) {
            set = OptionalDouble.of(next.advanceDeg());
            step = HoldNow.Step.SET;
        } else {
            close(HoldNow.Step.CLOSE_DONE);
        }
    }

    private void close(HoldNow.Step why) {
        step = why;
        moments.clear();
    }

    /** The advance that a speed begins at, no further than what knock left; empty where only the engine knows what stands in it. */
    private OptionalDouble startAt(int which) {
        double at = speeds.get(which);
        OptionalDouble stands = OptionalDouble.empty();
        if (timing.sets() == TimingPlan.Sets.FLAT) {
            stands = OptionalDouble.of(timing.start().deg());
        } else if (timing.sets() == TimingPlan.Sets.MAP
                && !timing.map().present().isEmpty()) {
            stands = OptionalDouble.of(present(at) + timing.start().deg());
        }
        return stands.isEmpty() ? stands : OptionalDouble.of(rounded(Math.min(stands.getAsDouble(), bansDeg[which])));
    }

    private double present(double at) {
        return timing.map().present().orElseThrow().degAt(at);
    }

    private double rounded(double deg) {
        double step = timing.step().resolution();
        return Math.floor(deg / step + 1e-9) * step;
    }
}
