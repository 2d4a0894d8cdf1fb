package org.nextpull.response;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.DoubleStream;
import org.nextpull.air.AirState;
import org.nextpull.air.Correction;
import org.nextpull.air.CorrectionStandard;
import org.nextpull.air.NoCorrection;
import org.nextpull.alarm.Alarm;
import org.nextpull.alarm.ExhaustStillRising;
import org.nextpull.alarm.PullLife;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.curve.CorrectedCurve;
import org.nextpull.curve.CurvePoint;
import org.nextpull.curve.CurveReader;
import org.nextpull.curve.RawCurve;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.plan.Band;
import org.nextpull.plan.Limit;
import org.nextpull.plan.SweepPlan;
import org.nextpull.pull.Candidate;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.SpeedBand;

/** Measures candidates: curve, correction, band figures, rows, knock, limits and conditions, joined with what was asked. */
public final class PullMeasure {
    private static final int ROWS_WITHOUT_BAND_RPM = 250;

    private final SweepPlan plan;
    private final CorrectionStandard standard;
    private final CurveReader reader;
    private final Optional<SpeedBand> band;

    /**
     * Measures under a plan. A log that is corrected already is not corrected again.
     */
    public PullMeasure(SweepPlan plan) {
        this.plan = plan;
        boolean corrected = plan.log()
                .correctedBy()
                .filter(already -> !(already instanceof NoCorrection))
                .isPresent();
        this.standard = corrected ? new NoCorrection() : plan.air().standard();
        this.reader = new CurveReader(plan.dyno());
        this.band = plan.band().map(Band::speeds);
    }

    /**
     * Measures one candidate.
     *
     * @param kept the candidate
     * @param asked what the operator set for it, where that is known
     * @param alarms alarms that sounded in it
     * @param number its number over the whole day, from 1
     */
    public MeasuredPull.Curve measure(Candidate kept, Optional<AskedSetting> asked, List<Alarm> alarms, int number) {
        Candidate candidate = kept.atHand();
        Place place =
                Place.inFile(candidate.source()).withLine(candidate.firstLine()).withPull(number);
        List<Finding> findings = new ArrayList<>();
        candidate.refusal().ifPresent(refusal -> findings.add(refusal.finding().at(place)));
        candidate.findings().forEach(finding -> findings.add(finding.at(place)));

        Samples inBand = candidate.samplesIn(band);
        Outcome<AirState> air = AirOfPull.of(inBand, plan.air(), standard.needsHumidity(), place);
        Optional<Correction> correction = correction(air, findings, place);
        Outcome<RawCurve> raw = reader.read(candidate);
        if (candidate.isUsable()) {
            raw.findings().forEach(finding -> findings.add(finding.at(place)));
        }
        Optional<CorrectedCurve> curve = candidate.isKnockAlone()
                ? Optional.empty()
                : raw.value().flatMap(found -> correction.map(known -> new CorrectedCurve(found, known)));

        PullLife life = PullLife.of(candidate.samples(), candidate.span().isPresent(), plan.watched());
        findings.addAll(life.findings(place));
        SettingJoin join = SettingJoin.of(inBand, life.dead(), asked, plan, place);
        findings.addAll(join.findings());
        findings.addAll(ExhaustStillRising.check(
                candidate.samples(), plan.limits().most().exhaust(), place));
        int every = plan.band().map(wanted -> wanted.rowsEveryRpm()).orElse(ROWS_WITHOUT_BAND_RPM);
        KnockHeard knock = KnockOfPull.of(
                candidate,
                asked,
                plan.limits(),
                alarms.stream().anyMatch(alarm -> alarm.limit() == Limit.KNOCK),
                every);
        if (!candidate.isKnockAlone()) {
            besideBand(knock, place).ifPresent(findings::add);
        }
        notRead(candidate, knock, place).ifPresent(findings::add);
        MeasuredPull pull = new MeasuredPull(
                number,
                new MeasuredPull.Origin(candidate.source(), candidate.firstLine(), candidate.number()),
                number - 1.0,
                join.setting(),
                join.asked(),
                standing(candidate, curve),
                correction,
                curve.flatMap(found -> figures(candidate, found, life.dead())),
                knock,
                join.leanestLambda(),
                Conditions.of(inBand, air.value()),
                MeasuredPull.LimitMet.worst(alarms),
                MeasuredPull.Unwatched.in(life),
                findings);
        return new MeasuredPull.Curve(pull, curve.map(found -> kept(reader, kept, found)), alarms);
    }

    /** A day of ten thousand pulls has no room for all curves: a pull whose rows were put away has its curve there, too. */
    private static Supplier<CorrectedCurve> kept(CurveReader reader, Candidate candidate, CorrectedCurve curve) {
        CorrectedCurve toDraw = curve.withoutNoise();
        Correction correction = curve.correction();
        return candidate.isAtHand()
                ? new MeasuredPull.Curve.AtHand(toDraw)
                : () -> new CorrectedCurve(
                                reader.read(candidate.atHand()).value().orElseThrow(), correction)
                        .withoutNoise();
    }

    /** Knock beside the band is said on its own, since nobody looks for it there; that of a stretch which is no pull is said already. */
    private Optional<Finding> besideBand(KnockHeard knock, Place place) {
        return knock.speeds()
                .filter(speeds -> !knock.at().isEmpty())
                .filter(speeds -> band.isPresent()
                        && !(band.get().contains(speeds.lowRpm()) && band.get().contains(speeds.highRpm())))
                .map(speeds -> Finding.warning(
                        FindingCode.KNOCK_BESIDE_BAND,
                        place,
                        Detail.of("low", speeds.lowRpm()),
                        Detail.of("high", speeds.highRpm()),
                        Detail.of("events", knock.events().orElse(0))));
    }

    private static Optional<Finding> notRead(Candidate candidate, KnockHeard knock, Place place) {
        boolean isLogged = candidate.samples().channels().stream().anyMatch(each -> each.role() == Role.KNOCK_EVENTS);
        return isLogged && knock.events().isEmpty()
                ? Optional.of(Finding.warning(FindingCode.KNOCK_NOT_READ, place))
                : Optional.empty();
    }

    /** Which readings of the air a correction needs that neither these columns nor the plan give. */
    public List<String> airLacking(Set<Role> logged) {
        return standard instanceof NoCorrection
                ? List.of()
                : AirOfPull.lacking(logged, plan.air(), standard.needsHumidity());
    }

    private Optional<Correction> correction(Outcome<AirState> air, List<Finding> findings, Place place) {
        if (standard instanceof NoCorrection) {
            return Optional.of(standard.correction(air.value().orElseGet(standard::reference), place));
        }
        findings.addAll(air.findings());
        Optional<Correction> correction = air.value().map(state -> standard.correction(state, place));
        correction.ifPresent(known -> findings.addAll(known.findings()));
        return correction;
    }

    private static MeasuredPull.Status standing(Candidate candidate, Optional<CorrectedCurve> curve) {
        if (candidate.refusal().isPresent()) {
            return switch (candidate.refusal().get().reason()) {
                case KNOCK_ALONE -> MeasuredPull.Status.NO_PULL;
                case CUT_SHORT, THROTTLE_LIFTED, DATA_STOPPED -> MeasuredPull.Status.CUT_SHORT;
                case THROWN_AWAY_FIRST -> MeasuredPull.Status.THROWN_AWAY;
                default -> MeasuredPull.Status.REFUSED;
            };
        }
        return curve.isPresent() ? MeasuredPull.Status.USED : MeasuredPull.Status.REFUSED;
    }

    private Optional<Figures> figures(Candidate candidate, CorrectedCurve curve, List<Channel> dead) {
        SpeedBand over =
                band.or(candidate::span).orElseGet(() -> around(curve.points().get(0)));
        Optional<RawCurve.BandMean> mean = curve.bandMean(over)
                .or(() -> candidate.kind().isSweep() || curve.points().size() > 1
                        ? Optional.empty()
                        : curve.bandMean(around(curve.points().get(0))));
        return mean.filter(found -> found.isComplete() || !candidate.isUsable() || band.isEmpty() || isHeld(curve))
                .map(found -> new Figures(
                        Optional.of(found.torque()),
                        Optional.of(found.power()),
                        within(found),
                        Optional.of(new Figures.TorqueAtSpeed(
                                curve.peakTorque().rpm(), curve.peakTorque().torque())),
                        Optional.of(new Figures.PowerAtSpeed(
                                curve.peakPower().rpm(), curve.peakPower().power())),
                        rows(candidate, curve, over, dead)));
    }

    private static boolean isHeld(CorrectedCurve curve) {
        return curve.points().size() == 1;
    }

    private static SpeedBand around(CurvePoint point) {
        return new SpeedBand(Math.max(0, point.rpm() - 1), point.rpm() + 1);
    }

    private static OptionalDouble within(RawCurve.BandMean mean) {
        double torque = mean.torque().newtonMetres();
        return torque > 0
                ? OptionalDouble.of(100 * mean.torqueError().newtonMetres() / torque)
                : OptionalDouble.empty();
    }

    private List<Figures.AtSpeed> rows(Candidate candidate, CorrectedCurve curve, SpeedBand over, List<Channel> dead) {
        int every = plan.band().map(wanted -> wanted.rowsEveryRpm()).orElse(ROWS_WITHOUT_BAND_RPM);
        Optional<Channel> lambda =
                SettingJoin.lambdaSensors(candidate.samples(), dead).stream().findFirst();
        OptionalDouble heldAt = isHeld(curve) ? middle(candidate) : OptionalDouble.empty();
        return curve.rowsEvery(every).stream()
                .filter(point -> over.contains(point.rpm()))
                .map(point -> {
                    SpeedBand near = new SpeedBand(Math.max(0, point.rpm() - every / 2.0), point.rpm() + every / 2.0);
                    return new Figures.AtSpeed(
                            point.rpm(),
                            point.torque(),
                            mean(candidate, Channel.of(Role.ADVANCE), near).map(Advance::ofDeg),
                            lambda.flatMap(sensor -> mean(candidate, sensor, near))
                                    .filter(value -> value > 0)
                                    .map(Lambda::of),
                            heldAt);
                })
                .toList();
    }

    private static Optional<Double> mean(Candidate candidate, Channel channel, SpeedBand near) {
        return candidate.meanIn(near, channel).stream().boxed().findFirst();
    }

    private static OptionalDouble middle(Candidate candidate) {
        return DoubleStream.of(candidate.samples().presentValues(Channel.of(Role.TIME)))
                .average();
    }
}
