package org.nextpull.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.alarm.ChannelLife;
import org.nextpull.channel.Channel;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.KnockMark;
import org.nextpull.plan.Limit;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanText;
import org.nextpull.response.Conditions;
import org.nextpull.response.Figures;
import org.nextpull.response.KnockHeard;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Torque;

/** Pulls of a day, written down one after the other. */
final class Pulls {
    private final List<MeasuredPull> pulls = new ArrayList<>();
    private String fuel = "e10";
    private Optional<String> label = Optional.empty();
    private boolean asked = true;
    private boolean offset;
    private List<Limit> unwatched = List.of();

    /** A plan of both factors: 20 to 36 deg by 2, lambda 0.80 to 0.94. */
    static SweepPlan bothFactors() {
        return plan("""
                [fuel]
                blend = "e10"
                [timing]
                start_deg = 20
                least_deg = 12
                most_deg = 36
                [mixture]
                start_lambda = 0.84
                richest_lambda = 0.78
                leanest_lambda = 0.94
                """);
    }

    /** A plan of timing alone. */
    static SweepPlan timingOnly() {
        return plan("""
                [fuel]
                blend = "e10"
                [timing]
                start_deg = 20
                least_deg = 12
                most_deg = 36
                """);
    }

    /** A plan of both factors whose limits guard every way to go. */
    static SweepPlan limited() {
        return plan("""
                [fuel]
                blend = "e10"
                [timing]
                start_deg = 20
                least_deg = 12
                most_deg = 36
                [mixture]
                start_lambda = 0.84
                richest_lambda = 0.78
                leanest_lambda = 0.94
                [limits]
                knock_events = 1
                exhaust_c = 900
                lean_lambda = 0.95
                fuel_pressure_kpa = 250
                injector_duty_percent = 88
                """);
    }

    /** A clean pull with torque and advance of its own at each speed. */
    static MeasuredPull ofRows(int number, double advanceDeg, Torque mean, List<Figures.AtSpeed> rows) {
        MeasuredPull flat = new Pulls().clean(advanceDeg, 0.87, 200).list().get(0);
        return new MeasuredPull(
                number,
                flat.origin(),
                number - 1.0,
                flat.setting(),
                flat.asked(),
                flat.standing(),
                flat.correction(),
                Optional.of(new Figures(
                        Optional.of(mean),
                        Optional.empty(),
                        OptionalDouble.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        rows)),
                flat.knock(),
                flat.leanestLambda(),
                flat.conditions(),
                flat.limitsMet(),
                flat.unwatched(),
                flat.findings());
    }

    static SweepPlan plan(String text) {
        return PlanText.read(text, "test.toml").value().orElseThrow();
    }

    Pulls fuel(String newFuel) {
        fuel = newFuel;
        return this;
    }

    Pulls label(String newLabel) {
        label = Optional.of(newLabel);
        return this;
    }

    /** From here on the spark is counted from a map that no log shows. */
    Pulls asOffset() {
        offset = true;
        return this;
    }

    /** From here on the mixture is known from a sensor alone. */
    Pulls measuredOnly() {
        asked = false;
        return this;
    }

    /** From here on no live channel watches these limits. */
    Pulls unwatched(Limit... limits) {
        unwatched = List.of(limits);
        return this;
    }

    Pulls addAll(List<MeasuredPull> more) {
        pulls.addAll(more);
        return this;
    }

    /** A clean pull in which knock was listened for. */
    Pulls clean(double advanceDeg, double lambda, double torqueNm) {
        return add(advanceDeg, lambda, torqueNm, KnockMark.NONE, MeasuredPull.Status.USED, List.of());
    }

    Pulls unheard(double advanceDeg, double lambda, double torqueNm) {
        return add(advanceDeg, lambda, torqueNm, KnockMark.NOT_MEASURED, MeasuredPull.Status.USED, List.of());
    }

    Pulls knocked(double advanceDeg, double lambda, double torqueNm) {
        return add(advanceDeg, lambda, torqueNm, KnockMark.HEARD, MeasuredPull.Status.USED, List.of());
    }

    /** A pull that was cut short because it knocked. */
    Pulls knockedAndCut(double advanceDeg, double lambda) {
        return add(advanceDeg, lambda, 100, KnockMark.HEARD, MeasuredPull.Status.CUT_SHORT, List.of());
    }

    /** A stretch under load that is no pull, in which it knocked. */
    Pulls knockedOutsideAPull(double advanceDeg, double lambda) {
        return add(advanceDeg, lambda, 0, KnockMark.HEARD, MeasuredPull.Status.NO_PULL, List.of());
    }

    Pulls limited(double advanceDeg, double lambda, Limit limit, double worst, double allowed) {
        return add(
                advanceDeg,
                lambda,
                200,
                KnockMark.NONE,
                MeasuredPull.Status.USED,
                List.of(new MeasuredPull.LimitMet(limit, worst, allowed)));
    }

    Pulls standing(MeasuredPull.Status standing) {
        MeasuredPull last = pulls.remove(pulls.size() - 1);
        pulls.add(last.withStanding(standing));
        return this;
    }

    private Pulls add(
            double advanceDeg,
            double lambda,
            double torqueNm,
            KnockMark knock,
            MeasuredPull.Status standing,
            List<MeasuredPull.LimitMet> limits) {
        int number = pulls.size() + 1;
        pulls.add(new MeasuredPull(
                number,
                new MeasuredPull.Origin("day.csv", number * 100L, number),
                number - 1.0,
                EngineSetting.ofNumbers(
                                offset ? Optional.empty() : Optional.of(Advance.ofDeg(advanceDeg)),
                                offset ? Optional.of(Advance.ofDeg(advanceDeg)) : Optional.empty(),
                                Optional.of(Lambda.of(lambda)))
                        .fitted(label, Optional.of(fuel)),
                EngineSetting.none().withLambda(asked ? Optional.of(Lambda.of(lambda)) : Optional.empty()),
                standing,
                Optional.empty(),
                standing == MeasuredPull.Status.CUT_SHORT || standing == MeasuredPull.Status.NO_PULL
                        ? Optional.empty()
                        : Optional.of(new Figures(
                                Optional.of(Torque.ofNewtonMetres(torqueNm)),
                                Optional.empty(),
                                OptionalDouble.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                List.of())),
                KnockHeard.marked(knock),
                Optional.of(Lambda.of(lambda)),
                Conditions.unknown(),
                limits,
                unwatched.stream()
                        .map(limit ->
                                new MeasuredPull.Unwatched(limit, Channel.of(limit.role()), ChannelLife.Life.BLANK))
                        .toList(),
                List.of()));
        return this;
    }

    List<MeasuredPull> list() {
        return List.copyOf(pulls);
    }

    int count() {
        return pulls.size();
    }
}
