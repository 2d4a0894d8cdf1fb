package org.nextpull.response;

import org.nextpull.curve.Driveline;
import org.nextpull.curve.TorqueAt;
import org.nextpull.plan.DynoFacts;
import org.nextpull.plan.SweepPlan;
import org.nextpull.pull.Gearing;
import org.nextpull.pull.PullRules;
import org.nextpull.pull.PullTimes;
import org.nextpull.pull.WantedKind;
import org.nextpull.unit.SpeedBand;

/** What a plan means to the rooms below that know no plan. */
public final class PlanRules {
    private PlanRules() {}

    /** How pulls are found. */
    public static PullRules pulls(SweepPlan plan) {
        return new PullRules(
                plan.band().map(band -> new SpeedBand(band.fromRpm(), band.toRpm())),
                switch (plan.pull().kind()) {
                    case AUTO -> WantedKind.AUTO;
                    case ACCELERATION -> WantedKind.ACCELERATION;
                    case STEPS -> WantedKind.STEPS;
                    case HOLD -> WantedKind.HOLD;
                },
                plan.pull().fullLoad(),
                new PullTimes(plan.pull().settleS(), plan.pull().holdS()),
                plan.pull().throwAwayFirst(),
                plan.log().lambdaDelayS(),
                gearing(plan.dyno()));
    }

    /** How torque is had from what was logged. */
    public static Driveline driveline(SweepPlan plan) {
        DynoFacts dyno = plan.dyno();
        return new Driveline(
                switch (dyno.torqueAt()) {
                    case CRANK -> TorqueAt.CRANK;
                    case WHEEL -> TorqueAt.WHEEL;
                    case ROLLER -> TorqueAt.ROLLER;
                },
                new Driveline.Inertia(
                        dyno.engineSide(),
                        dyno.roller().inertiaKgM2(),
                        dyno.inertiaInLog() != DynoFacts.InertiaInLog.NO),
                gearing(dyno));
    }

    private static Gearing gearing(DynoFacts dyno) {
        return new Gearing(dyno.roller().radiusM(), dyno.roller().engineRevPerRollerRev());
    }
}
