package org.nextpull.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.unit.Pressure;

class PressureCheckTest {
    private static final PressureCheck.Readings NONE = PressureCheck.Readings.none();

    @Test
    void readingsThatAgreeSayNothing() {
        PressureCheck.Readings readings = new PressureCheck.Readings(
                Optional.of(kPa(95.4)),
                Optional.of(kPa(95.6)),
                Optional.of(kPa(95.1)),
                Optional.of(kPa(93.5)),
                OptionalDouble.of(500));
        assertThat(PressureCheck.of(readings, Place.nowhere())).isEmpty();
        assertThat(PressureCheck.of(NONE, Place.nowhere())).isEmpty();
    }

    @Test
    void aWeatherReportAgainstTheLoggersBarometerIsRecognised() {
        Finding finding = only(logged(101.8, 95.9));
        assertThat(finding.code()).isEqualTo(FindingCode.AIR_BAROMETER_LOOKS_SEA_LEVEL);
        assertThat(finding.number("station").orElseThrow()).isEqualTo(95_900);
        assertThat(finding.number("altitude").orElseThrow()).isCloseTo(500, within(10.0));
    }

    @Test
    void barometersThatDifferOtherwiseAreNamed() {
        Finding finding = only(logged(94, 95.9));
        assertThat(finding.code()).isEqualTo(FindingCode.AIR_BAROMETERS_DIFFER);
        assertThat(finding.number("other").orElseThrow()).isEqualTo(95_900);
    }

    @Test
    void aManifoldAtRestShowsTheTrueBarometer() {
        assertThat(only(manifold(101.3, OptionalDouble.of(97), OptionalDouble.empty()))
                        .code())
                .isEqualTo(FindingCode.AIR_BAROMETER_LOOKS_SEA_LEVEL);
        assertThat(only(manifold(94, OptionalDouble.of(97), OptionalDouble.empty()))
                        .code())
                .isEqualTo(FindingCode.AIR_MANIFOLD_AT_REST_DIFFERS);
    }

    @Test
    void aManifoldAtFullLoadBoundsTheBarometerFromBothSides() {
        assertThat(only(manifold(95, OptionalDouble.empty(), OptionalDouble.of(99)))
                        .code())
                .isEqualTo(FindingCode.AIR_MANIFOLD_ABOVE_BAROMETER);
        assertThat(only(manifold(101.3, OptionalDouble.empty(), OptionalDouble.of(90)))
                        .code())
                .isEqualTo(FindingCode.AIR_MANIFOLD_FAR_BELOW_BAROMETER);
    }

    @Test
    void seaLevelPressureAtAnAltitudeIsRecognisedWithTheStationPressure() {
        Finding finding = only(NONE.withGiven(kPa(102.1)).withAltitude(1600));
        assertThat(finding.code()).isEqualTo(FindingCode.AIR_BAROMETER_LOOKS_SEA_LEVEL);
        assertThat(finding.number("station").orElseThrow()).isCloseTo(84_200, within(300.0));
        assertThat(finding.number("altitude").orElseThrow()).isCloseTo(1600, within(1e-6));
    }

    @Test
    void theStandardAtmosphereWrittenDownIsRecognisedOnALowHillToo() {
        assertThat(only(NONE.withGiven(kPa(101.325)).withAltitude(150)).code())
                .isEqualTo(FindingCode.AIR_BAROMETER_LOOKS_SEA_LEVEL);
        assertThat(PressureCheck.of(NONE.withGiven(kPa(101.325)).withAltitude(20), Place.nowhere()))
                .isEmpty();
    }

    @Test
    void aBarometerThatFitsNoWeatherAtItsAltitudeIsNamedWithTheUsualRange() {
        Finding finding = only(NONE.withGiven(kPa(84)).withAltitude(100));
        assertThat(finding.code()).isEqualTo(FindingCode.AIR_BAROMETER_NOT_OF_ALTITUDE);
        assertThat(finding.number("low").orElseThrow()).isBetween(95_000.0, 97_000.0);
    }

    @Test
    void theLoggersBarometerIsUsedBeforeTheOneGiven() {
        PressureCheck.Readings readings = logged(95.5, 95.6);
        assertThat(readings.barometer()).contains(kPa(95.6));
        assertThat(NONE.withGiven(kPa(95.5)).barometer()).contains(kPa(95.5));
    }

    private static Finding only(PressureCheck.Readings readings) {
        List<Finding> findings = PressureCheck.of(readings, Place.inFile("plan.toml"));
        assertThat(findings).hasSize(1);
        assertThat(findings.get(0).place()).isEqualTo(Place.inFile("plan.toml"));
        return findings.get(0);
    }

    private static Pressure kPa(double kilopascals) {
        return Pressure.ofKilopascals(kilopascals);
    }

    private static PressureCheck.Readings logged(double givenKpa, double loggedKpa) {
        return new PressureCheck.Readings(
                Optional.of(kPa(givenKpa)),
                Optional.of(kPa(loggedKpa)),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty());
    }

    private static PressureCheck.Readings manifold(
            double givenKpa, OptionalDouble restKpa, OptionalDouble fullLoadKpa) {
        return new PressureCheck.Readings(
                Optional.of(kPa(givenKpa)),
                Optional.empty(),
                restKpa.stream().mapToObj(PressureCheckTest::kPa).findFirst(),
                fullLoadKpa.stream().mapToObj(PressureCheckTest::kPa).findFirst(),
                OptionalDouble.empty());
    }
}
