package org.nextpull.session;

import java.util.ArrayList;
import java.util.Arrays;
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
    /** An advance that is logged so near to what was asked for is that; on small steps less. */
    private static final double SAME_DEG = 0.5;
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
    private final double sameDeg;
    private final SteadyTorque torque;

    private List<HoldPlanner.Plateau> plateaus = new ArrayList<>();
    private int speed;
    private HoldNow.Step step = HoldNow.Step.GO;
    private OptionalDouble set = OptionalDouble.empty();
    /** When the advance was asked for that stands now, or the load came on. */
    private double askedAtS;

    private Optional<HoldNow.OtherAdvance> other = Optional.empty();
    /** Since when the log shows more than may stand. */
    private OptionalDouble beyondAtS = OptionalDouble.empty();

    private OptionalDouble nearAtS = OptionalDouble.empty();
    private boolean seesThrottle;
    private boolean seesTorque;
    private OptionalDouble loadedAtS = OptionalDouble.empty();
    private double lastLoadedS = Double.NEGATIVE_INFINITY;
    private double nowS;
    private double rpm;
    private double throttle;
    private OptionalDouble advance = OptionalDouble.empty();
    private OptionalDouble exhaust = OptionalDouble.empty();
    private double exhaustAtS;
    private double exhaustRate;

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
        double resolution = timing.step().resolution();
        this.sameDeg =
                Math.max(resolution / 2 + 1e-6, Math.min(SAME_DEG, timing.step().largest() / 4));
        this.torque = new SteadyTorque(plan.pull().holdS(), plan.pull().settleS(), sameDeg);
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
        return new HoldNow(step, at + 1, speeds.size(), speeds.get(at), set, left, plateaus.size(), other);
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
            OptionalDouble open = samples.find(THROTTLE, row);
            throttle = open.orElse(throttle);
            seesThrottle |= open.isPresent();
            OptionalDouble nm = samples.find(TORQUE, row);
            seesTorque |= nm.isPresent();
            OptionalDouble deg = samples.find(ADVANCE, row);
            if (deg.isPresent()) {
                advance = deg;
            }
            warm(samples.find(EXHAUST, row));
            load(throttle >= plan.pull().fullLoad());
            look();
            if (loadedAtS.isPresent() && !step.isClose()) {
                row(nm, samples.find(KNOCK, row).orElse(0));
            }
        }
    }

    /** A log that never shows what the guide goes by is said once the speed is held. */
    private void look() {
        boolean near = speed < speeds.size() && Math.abs(rpm - speeds.get(speed)) <= NEAR_RPM;
        if (!near || (seesThrottle && loadedAtS.isEmpty())) {
            nearAtS = OptionalDouble.empty();
            step = step == HoldNow.Step.CLOSE_UNSEEN && !near && !seesThrottle ? HoldNow.Step.GO : step;
        } else if (nearAtS.isEmpty()) {
            nearAtS = OptionalDouble.of(nowS);
        } else if (nowS - nearAtS.getAsDouble()
                        >= plan.pull().settleS() + plan.pull().holdS()
                && !(seesThrottle && seesTorque && advance.isPresent())
                && !step.isClose()) {
            close(HoldNow.Step.CLOSE_UNSEEN);
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
                askedAtS = nowS;
                other = Optional.empty();
                step = HoldNow.Step.HOLD;
            }
        } else if (nowS - lastLoadedS > CLOSED_S
                && (loadedAtS.isPresent() || step.isClose())
                && (seesThrottle || step != HoldNow.Step.CLOSE_UNSEEN)) {
            loadedAtS = OptionalDouble.empty();
            torque.forget();
            other = Optional.empty();
            if (step.isClose() && !step.isHeldAgain()) {
                speed++;
                plateaus = new ArrayList<>();
                step = speed < speeds.size() ? HoldNow.Step.GO : HoldNow.Step.PROVE;
                set = speed < speeds.size() ? startAt(speed) : OptionalDouble.empty();
            } else {
                step = HoldNow.Step.GO;
            }
        }
    }

    private void row(OptionalDouble torqueNm, double knocks) {
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
        } else if (advance.isPresent() && isBeyond(advance.getAsDouble())) {
            other = Optional.of(new HoldNow.OtherAdvance(set.orElse(mostDeg()), advance.getAsDouble()));
            close(HoldNow.Step.CLOSE_ADVANCE);
        } else if (torqueNm.isPresent() && torqueNm.getAsDouble() > 0 && advance.isPresent()) {
            hold(advance.getAsDouble(), torqueNm.getAsDouble());
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

    /** The most that may stand here: what knock and the plan leave, and a step beyond what ran clean, or beyond the start. */
    private double mostDeg() {
        double clean = plateaus.stream()
                .mapToDouble(HoldPlanner.Plateau::advanceDeg)
                .max()
                .orElse(set.orElse(Double.POSITIVE_INFINITY));
        return Math.min(
                clean + timing.step().largest(),
                Math.min(bansDeg[speed], timing.most().deg()));
    }

    /** Whether more than may stand has stood for a moment. */
    private boolean isBeyond(double deg) {
        if (deg <= mostDeg() + sameDeg) {
            beyondAtS = OptionalDouble.empty();
        } else if (beyondAtS.isEmpty()) {
            beyondAtS = OptionalDouble.of(nowS);
        }
        return beyondAtS.isPresent() && nowS - beyondAtS.getAsDouble() >= CLOSED_S;
    }

    /** An advance that stands, though another was asked for, is a plateau of its own once nobody seems to change it any more. */
    private void hold(double deg, double nm) {
        if (Math.abs(rpm - speeds.get(speed)) > NEAR_RPM) {
            torque.forget();
            return;
        }
        Optional<HoldPlanner.Plateau> settled = torque.take(nowS, deg, nm);
        double asked = set.orElse(deg);
        boolean isAsked = Math.abs(deg - asked) <= sameDeg;
        if (isAsked) {
            step = HoldNow.Step.HOLD;
            other = Optional.empty();
            settled.ifPresent(plateau ->
                    next(new HoldPlanner.Plateau(set.orElse(plateau.advanceDeg()), plateau.lnTorquePercent())));
            return;
        }
        step = HoldNow.Step.SET;
        if (nowS - askedAtS >= plan.pull().settleS() + plan.pull().holdS()) {
            boolean isSaid = other.filter(said -> said.askedDeg() == asked && Math.abs(said.readDeg() - deg) <= sameDeg)
                    .isPresent();
            other = isSaid ? other : Optional.of(new HoldNow.OtherAdvance(asked, deg));
            settled.filter(plateau -> plateaus.stream()
                            .noneMatch(held -> Math.abs(held.advanceDeg() - plateau.advanceDeg()) <= sameDeg))
                    .ifPresent(this::next);
        }
    }

    private void next(HoldPlanner.Plateau plateau) {
        plateaus.add(plateau);
        askedAtS = nowS;
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
        torque.forget();
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
