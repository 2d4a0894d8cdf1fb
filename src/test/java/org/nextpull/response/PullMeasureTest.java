package org.nextpull.response;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.nextpull.alarm.Alarm;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.plan.Limit;
import org.nextpull.unit.Power;
import org.nextpull.unit.Torque;

/** Figures of one pull, worked out by hand from torque that rises in a straight line. */
class PullMeasureTest {
    /** By DIN 70020 the factor at 20 degC and 100 kPa is 101.3 / 100 = 1.013, whatever the humidity. */
    private static final String DIN = """
            [band]
            from_rpm = 3500
            to_rpm = 5500
            rows_every_rpm = 500
            [air]
            standard = "din-70020"
            baro_kpa = 100
            air_c = 20
            """;

    private static final String ISO = DIN.replace("din-70020", "iso-1585");

    private static MeasuredPull measured(String plan, Sweep sweep) {
        return measured(plan, sweep, List.of());
    }

    private static MeasuredPull measured(String plan, Sweep sweep, List<Alarm> alarms) {
        return new PullMeasure(Sweep.plan(plan))
                .measure(sweep.candidate(), Optional.empty(), alarms, 1)
                .pull();
    }

    private static List<FindingCode> codes(MeasuredPull pull) {
        return pull.findings().stream().map(Finding::code).toList();
    }

    /**
     * The middle of the band is 4500 rpm, 180 N.m. Power goes with the square of the speed: the mean square of 81 points 25 rpm apart is
     * 4500^2 + 25^2 (81^2 - 1) / 12 = 20,591,667 rpm2, so 20,591,667 / 25 x pi / 30 = 86,254 W.
     */
    @Test
    void bandMeansAreThoseOfTheGridTimesTheFactor() {
        Figures figures = measured(DIN, Sweep.ofRisingTorque()).figures().orElseThrow();

        assertThat(figures.meanTorque().map(Torque::newtonMetres).orElseThrow()).isCloseTo(180 * 1.013, within(1e-6));
        assertThat(figures.meanPower().map(Power::watts).orElseThrow()).isCloseTo(86_254.17 * 1.013, within(0.1));
    }

    @Test
    void rowsStandAtTheMultiplesInTheBandWithTheAdvanceHalfARowAround() {
        Sweep sweep = Sweep.ofRisingTorque()
                .with(Channel.of(Role.ADVANCE), rpm -> 10 + rpm / 500)
                .with(Channel.of(Role.LAMBDA), rpm -> 0.95 - rpm / 50_000);

        List<Figures.AtSpeed> rows =
                measured(DIN, sweep).figures().orElseThrow().rows();

        assertThat(rows).extracting(Figures.AtSpeed::rpm).containsExactly(3500.0, 4000.0, 4500.0, 5000.0, 5500.0);
        assertThat(rows.get(1).torque().newtonMetres()).isCloseTo(160 * 1.013, within(1e-6));
        assertThat(rows.get(1).advance().orElseThrow().deg()).isCloseTo(18, within(1e-9));
        assertThat(rows.get(1).lambda().orElseThrow().value()).isCloseTo(0.87, within(1e-9));
        assertThat(rows).allMatch(row -> row.heldAtS().isEmpty());
    }

    /** The peak belongs to the curve, which the pull may carry on beyond the band: 240 N.m at 6000 rpm. */
    @Test
    void thePeakMayLieBesideTheBand() {
        Figures.TorqueAtSpeed peak = measured(DIN, Sweep.ofRisingTorque())
                .figures()
                .orElseThrow()
                .peakTorque()
                .orElseThrow();

        assertThat(peak.rpm()).isEqualTo(6000);
        assertThat(peak.torque().newtonMetres()).isCloseTo(240 * 1.013, within(0.01));
    }

    @Test
    void aLogThatIsCorrectedAlreadyKeepsItsFigures() {
        MeasuredPull pull = measured(DIN + "[log]\ncorrected_by = \"din-70020\"\n", Sweep.ofRisingTorque());

        assertThat(pull.correction().orElseThrow().factor()).isEqualTo(1);
        assertThat(pull.figures().orElseThrow().meanTorque().orElseThrow().newtonMetres())
                .isCloseTo(180, within(1e-6));
    }

    @Test
    void withoutHumidityAStandardOfDryPressureGivesNoFigureAndSaysWhatIsMissing() {
        MeasuredPull pull = measured(ISO, Sweep.ofRisingTorque());

        assertThat(pull.figures()).isEmpty();
        assertThat(pull.standing()).isEqualTo(MeasuredPull.Status.REFUSED);
        assertThat(codes(pull)).contains(FindingCode.AIR_READING_MISSING);
        assertThat(new PullMeasure(Sweep.plan(ISO)).airLacking(Set.of())).containsExactly("humidity");
        assertThat(new PullMeasure(Sweep.plan(DIN)).airLacking(Set.of())).isEmpty();
    }

    /** A sensor may read a little over 100 %; the air then counts as saturated. Further beyond it is no reading of air. */
    @Test
    void humidityJustBeyondSaturationIsHeldAndFurtherBeyondIsRefused() {
        MeasuredPull held = measured(ISO, Sweep.ofRisingTorque().with(Role.HUMIDITY, 1.04));
        MeasuredPull refused = measured(ISO, Sweep.ofRisingTorque().with(Role.HUMIDITY, 1.06));

        assertThat(held.conditions().air().orElseThrow().relativeHumidity()).isCloseTo(1, within(1e-9));
        assertThat(codes(held)).contains(FindingCode.AIR_HUMIDITY_HELD);
        assertThat(refused.figures()).isEmpty();
        assertThat(codes(refused)).contains(FindingCode.AIR_HUMIDITY_OUT_OF_RANGE);
    }

    @Test
    void whatTheLogReadsOfTheAirOutranksThePlan() {
        MeasuredPull pull = measured(DIN, Sweep.ofRisingTorque().with(Role.BAROMETER, 101_300));

        assertThat(pull.correction().orElseThrow().factor()).isCloseTo(1, within(1e-12));
    }

    private static Alarm alarm(Limit limit, Role role, double worst, double allowed) {
        Alarm.RowPlace moment = new Alarm.RowPlace(10, OptionalDouble.of(0.1));
        return new Alarm(limit, Channel.of(role), moment, moment, 1, worst, allowed);
    }

    /** Of an exhaust the hottest is the worst, of a pressure that must not fall the lowest. */
    @Test
    void eachLimitIsMetAtItsWorst() {
        List<MeasuredPull.LimitMet> met = measured(
                        DIN,
                        Sweep.ofRisingTorque(),
                        List.of(
                                alarm(Limit.EXHAUST, Role.EXHAUST_TEMPERATURE, 1180, 1173),
                                alarm(Limit.EXHAUST, Role.EXHAUST_TEMPERATURE, 1190, 1173),
                                alarm(Limit.FUEL_PRESSURE, Role.FUEL_PRESSURE, 240_000, 250_000),
                                alarm(Limit.FUEL_PRESSURE, Role.FUEL_PRESSURE, 230_000, 250_000)))
                .limitsMet();

        assertThat(met)
                .containsExactlyInAnyOrder(
                        new MeasuredPull.LimitMet(Limit.EXHAUST, 1190, 1173),
                        new MeasuredPull.LimitMet(Limit.FUEL_PRESSURE, 230_000, 250_000));
    }
}
