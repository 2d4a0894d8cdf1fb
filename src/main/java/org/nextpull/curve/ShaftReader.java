package org.nextpull.curve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.math.Series;
import org.nextpull.plan.DynoFacts;
import org.nextpull.pull.Candidate;
import org.nextpull.pull.SpeedSource;
import org.nextpull.unit.Power;
import org.nextpull.unit.Torque;

/** Reads speed and torque of one pull: logged torque, or power over speed, or the roller's inertia alone. */
final class ShaftReader {
    /** Torque times speed and power may differ by this much before it is said. */
    private static final double AGREE = 0.015;

    private final Candidate pull;
    private final DynoFacts dyno;
    private final Place place;
    private final List<Finding> findings = new ArrayList<>();

    ShaftReader(Candidate pull, DynoFacts dyno) {
        this.pull = pull;
        this.dyno = dyno;
        this.place = pull.place();
    }

    Outcome<Rows> read() {
        Optional<ShaftSpeeds> turning = ShaftSpeeds.of(pull.samples(), pull.speed(), dyno);
        if (turning.isEmpty()) {
            return Outcome.failed(error(
                    FindingCode.CURVE_TOO_THIN, Detail.of("rows", pull.samples().rows())));
        }
        Optional<Trace> torque = Trace.of(pull.samples(), Channel.of(Role.TORQUE), 1);
        Optional<Trace> power = Trace.of(pull.samples(), Channel.of(Role.POWER), 1);
        if (torque.isPresent()) {
            return logged(turning.get(), torque.get(), power);
        }
        return power.isPresent() ? fromPower(turning.get(), power.get()) : fromInertia(turning.get());
    }

    private Outcome<Rows> logged(ShaftSpeeds turning, Trace torque, Optional<Trace> power) {
        double share = shaftShare(turning);
        if (power.isPresent()) {
            OptionalDouble found = ratioOfPower(turning, torque, power.get());
            if (found.isPresent()) {
                share = agreeing(found.getAsDouble(), share);
            }
        }
        CurveAxes axes = new CurveAxes(turning.kind(), dyno.torqueAt(), share);
        return finish(turning, axes, torque);
    }

    /** The share of the shaft that the logged power speaks for: the asked one, or that of the axis, or else the asked one with a finding. */
    private double agreeing(double found, double asked) {
        if (Math.abs(found / asked - 1) <= AGREE) {
            return asked;
        }
        if (Math.abs(found - 1) <= AGREE) {
            return 1;
        }
        findings.add(Finding.warning(
                FindingCode.CURVE_TORQUE_AND_POWER_DISAGREE, place, Detail.of("percent", 100 * found / asked)));
        return asked;
    }

    /** Median of power over torque and axis speed: how often the torque's shaft turns for one turn of the axis. */
    private static OptionalDouble ratioOfPower(ShaftSpeeds turning, Trace torque, Trace power) {
        double[] ratios = new double[power.size()];
        int count = 0;
        for (int row = 0; row < power.size(); row++) {
            double time = power.timeS().get(row);
            OptionalDouble rpm = turning.axis().at(time);
            OptionalDouble newtonMetres = torque.at(time);
            if (rpm.isPresent() && newtonMetres.isPresent()) {
                double watts = Torque.ofNewtonMetres(newtonMetres.getAsDouble())
                        .at(rpm.getAsDouble())
                        .watts();
                double ratio = power.value().get(row) / watts;
                if (Double.isFinite(ratio) && ratio > 0) {
                    ratios[count++] = ratio;
                }
            }
        }
        return count == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(Series.copyOf(ratios, 0, count).median());
    }

    private Outcome<Rows> fromPower(ShaftSpeeds turning, Trace power) {
        CurveAxes axes = new CurveAxes(turning.kind(), dyno.torqueAt(), shaftShare(turning));
        double[] times = new double[power.size()];
        double[] torques = new double[power.size()];
        int count = 0;
        for (int row = 0; row < power.size(); row++) {
            double rpm = turning.axis().at(power.timeS().get(row)).orElse(0);
            if (rpm > 0) {
                times[count] = power.timeS().get(row);
                torques[count++] =
                        axes.torque(Power.ofWatts(power.value().get(row)), rpm).newtonMetres();
            }
        }
        if (count == 0) {
            return Outcome.failed(error(FindingCode.CURVE_TOO_THIN, Detail.of("rows", count)));
        }
        findings.add(Finding.note(FindingCode.CURVE_TORQUE_FROM_POWER, place));
        return finish(turning, axes, new Trace(Series.copyOf(times, 0, count), Series.copyOf(torques, 0, count)));
    }

    private Outcome<Rows> fromInertia(ShaftSpeeds turning) {
        InertiaTorque inertia = new InertiaTorque(dyno, turning);
        OptionalDouble share = turning.rollerRevPerAxisRev();
        if (dyno.inertia().rollerKgM2().isEmpty()
                || share.isEmpty()
                || turning.axis().size() < 3) {
            return Outcome.failed(error(FindingCode.CURVE_WITHOUT_TORQUE));
        }
        if (!inertia.isKnown()) {
            findings.add(leftOut("the ratio of engine and roller"));
            inertia = inertia.rollerOnly();
        }
        findings.add(Finding.note(FindingCode.CURVE_TORQUE_AT_ROLLER, place));
        Trace axis = turning.axis().withSlopes();
        CurveAxes axes = new CurveAxes(turning.kind(), DynoFacts.Shaft.ROLLER, share.getAsDouble());
        return Outcome.of(
                new Rows(axes, axis.timeS(), axis.value(), inertia.at(share.getAsDouble(), axis.timeS())), findings);
    }

    /** Joins torque and speed, and puts the inertia back that the log leaves out. */
    private Outcome<Rows> finish(ShaftSpeeds turning, CurveAxes axes, Trace logged) {
        Trace torque = pull.kind().isSweep() ? logged.withoutSpikes() : logged;
        if (torque.size() < logged.size()) {
            findings.add(Finding.warning(
                    FindingCode.CURVE_TORQUE_SPIKES, place, Detail.of("count", logged.size() - torque.size())));
        }
        double[] times = new double[torque.size()];
        double[] rpms = new double[torque.size()];
        double[] torques = new double[torque.size()];
        int count = 0;
        for (int row = 0; row < torque.size(); row++) {
            double time = torque.timeS().get(row);
            OptionalDouble rpm = turning.axis().at(time);
            if (rpm.isPresent()) {
                times[count] = time;
                rpms[count] = rpm.getAsDouble();
                torques[count++] = torque.value().get(row);
            }
        }
        if (count == 0) {
            return Outcome.failed(error(FindingCode.CURVE_TOO_THIN, Detail.of("rows", count)));
        }
        Series time = Series.copyOf(times, 0, count);
        Series sum = withInertia(turning, axes, time, Series.copyOf(torques, 0, count));
        return Outcome.of(new Rows(axes, time, Series.copyOf(rpms, 0, count), sum), findings);
    }

    private Series withInertia(ShaftSpeeds turning, CurveAxes axes, Series times, Series torque) {
        if (!dyno.inertia().isToBeAdded() || !pull.kind().isSweep()) {
            return torque;
        }
        InertiaTorque inertia = new InertiaTorque(dyno, turning);
        if (!inertia.isKnown()) {
            findings.add(leftOut("the ratio of engine and roller"));
            return torque;
        }
        Series added = inertia.at(axes.shaftRevPerSpeedRev(), times);
        findings.add(Finding.note(FindingCode.CURVE_INERTIA_ADDED, place, Detail.of("newton_metres", added.mean())));
        return torque.plus(added);
    }

    /** Revolutions of the torque's shaft for one of the axis. */
    private double shaftShare(ShaftSpeeds turning) {
        return dyno.torqueAt() == DynoFacts.Shaft.ROLLER
                ? turning.rollerRevPerAxisRev().orElse(1)
                : 1;
    }

    private Finding leftOut(String missing) {
        return Finding.warning(FindingCode.CURVE_INERTIA_LEFT_OUT, place, Detail.of("missing", missing));
    }

    private Finding error(FindingCode code, Detail... details) {
        return Finding.error(code, place, details);
    }

    /**
     * Speed and torque of a pull, row by row in order of time, where both are known.
     *
     * @param axes the shafts that they belong to
     * @param timeS time, s
     * @param rpm speed of the axis
     * @param torque torque of the shaft, N.m
     */
    record Rows(CurveAxes axes, Series timeS, Series rpm, Series torque) {
        int size() {
            return timeS.size();
        }
    }

    /** The torque that turning masses take while the speed changes: T = J dw/dt, each mass at its own shaft, stated at one of them. */
    private record InertiaTorque(DynoFacts dyno, ShaftSpeeds turning) {
        private static final double RAD_S_PER_RPM = Math.PI / 30;

        /** Roller revolutions for one of the axis, as far as a roller inertia needs them. */
        OptionalDouble rollerShare() {
            return dyno.inertia().rollerKgM2().isPresent() ? turning.rollerRevPerAxisRev() : OptionalDouble.of(0);
        }

        /** Engine revolutions for one of the axis, as far as an engine-side inertia needs them. */
        OptionalDouble engineShare() {
            if (dyno.inertia().engineSideKgM2().isEmpty()) {
                return OptionalDouble.of(0);
            }
            return turning.kind() == SpeedSource.Axis.ROLLER
                    ? dyno.gearing().engineRevPerRollerRev()
                    : OptionalDouble.of(1);
        }

        /** The same without the engine's side. */
        InertiaTorque rollerOnly() {
            DynoFacts.Inertia inertia = dyno.inertia();
            return new InertiaTorque(
                    new DynoFacts(
                            dyno.kind(),
                            dyno.torqueAt(),
                            new DynoFacts.Inertia(OptionalDouble.empty(), inertia.rollerKgM2(), inertia.inLog()),
                            dyno.gearing()),
                    turning);
        }

        boolean isKnown() {
            return rollerShare().isPresent() && engineShare().isPresent();
        }

        /**
         * Torque in N.m at a shaft that turns {@code shaftRevPerAxisRev} times for each turn of the axis. Power is the same at every shaft,
         * so each mass gives J (its speed over the axis')(its acceleration) over the shaft's share.
         */
        Series at(double shaftRevPerAxisRev, Series times) {
            double engineRatio = engineShare().orElseThrow();
            double engine = dyno.inertia().engineSideKgM2().orElse(0) * engineRatio * engineRatio;
            double roller =
                    dyno.inertia().rollerKgM2().orElse(0) * rollerShare().orElseThrow();
            Series torque = turning.axisRates(times).times(engine * RAD_S_PER_RPM / shaftRevPerAxisRev);
            return roller == 0
                    ? torque
                    : torque.plus(turning.rollerRates(times).times(roller * RAD_S_PER_RPM / shaftRevPerAxisRev));
        }
    }
}
