package org.nextpull.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.nextpull.air.AirState;
import org.nextpull.air.Iso1585;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.unit.Pressure;
import org.nextpull.unit.Temperature;
import org.nextpull.unit.UnitSystem;

class FindingTextTest {
    private static final FindingText METRIC = FindingText.in(new Shown(UnitSystem.METRIC));
    private static final FindingText US = FindingText.in(new Shown(UnitSystem.US));

    @ParameterizedTest
    @EnumSource(FindingCode.class)
    void everyCodeCanBePrintedEvenWithoutItsDetails(FindingCode code) {
        String sentence = METRIC.sentence(Finding.warning(code, Place.nowhere()));
        assertThat(sentence).isNotBlank().doesNotContain("{");
    }

    @Test
    void detailsAndPlaceFillTheSentence() {
        Finding finding = Finding.warning(
                FindingCode.PULL_CUT_SHORT,
                Place.atLine("day.csv", 212).withPull(3),
                Detail.of("rpm", 5811.4),
                Detail.of("want", 6500.0));
        assertThat(METRIC.sentence(finding))
                .isEqualTo("Pull 3 of day.csv rejected: it ends at 5811 rpm, the band at 6500 rpm. Run it again.");
        assertThat(METRIC.withPlace(finding)).startsWith("Pull 3 of day.csv");
    }

    @Test
    void knockAtOneSpeedIsNoRangeOfSpeeds() {
        Finding knock = Finding.warning(
                FindingCode.PULL_KNOCK_ALONE,
                Place.inFile("day.csv").withPull(3),
                Detail.of("low", 3293.2),
                Detail.of("high", 3293.4),
                Detail.of("events", 1));
        assertThat(METRIC.sentence(knock)).contains("at 3293 rpm").doesNotContain("3293 to 3293");
    }

    @Test
    void aPlanErrorNamesFileLineColumnAndKey() {
        Finding finding = Finding.error(
                FindingCode.PLAN_OUT_OF_RANGE,
                Place.atLine("hill.toml", 7).withColumn(14).withKey("timing.start_deg"),
                Detail.of("value", "180"),
                Detail.of("low", "-20"),
                Detail.of("high", "70"));
        assertThat(METRIC.withPlace(finding))
                .isEqualTo(
                        "hill.toml, line 7, column 14: timing.start_deg = 180 is out of range; give a number from -20 to 70.");
    }

    @Test
    void aKeyWithoutANearNameGetsTheListOfKeys() {
        Place place = Place.atLine("hill.toml", 7).withKey("timing.zzz");
        assertThat(METRIC.sentence(Finding.error(
                        FindingCode.PLAN_UNKNOWN_KEY, place, Detail.of("allowed", "start_deg, most_deg"))))
                .isEqualTo("There is no key timing.zzz in a plan; remove it, or use one of start_deg, most_deg.");
        assertThat(METRIC.sentence(Finding.error(
                        FindingCode.PLAN_UNKNOWN_KEY,
                        place,
                        Detail.of("allowed", "start_deg, most_deg"),
                        Detail.of("nearest", "start_deg"))))
                .contains("did you mean start_deg?");
    }

    /** 29.92 inHg is the pressure of the standard atmosphere (ISO 2533), and 59 °F its 15 °C. */
    @Test
    void numbersAreInTheUnitsThatTheReaderAskedFor() {
        Finding air = Finding.warning(
                FindingCode.AIR_BAROMETERS_DIFFER,
                Place.nowhere(),
                Detail.of("barometer", 101_325.0),
                Detail.of("other", 98_000.0));
        assertThat(METRIC.sentence(air)).contains("101.3 kPa").contains("98.0 kPa");
        assertThat(US.sentence(air)).contains("29.92 inHg").contains("28.94 inHg");
        Finding wet = Finding.error(
                FindingCode.AIR_WET_BULB_TOO_LOW,
                Place.nowhere(),
                Detail.of("wet_bulb", 273.15),
                Detail.of("dry_bulb", 288.15));
        assertThat(US.sentence(wet)).contains("32 °F").contains("59 °F");
    }

    @Test
    void aDifferenceOfTemperatureHasNoOffset() {
        Finding inlet = Finding.warning(FindingCode.INLET_AIR_DIFFERS, Place.nowhere(), Detail.of("kelvins", 10.0));
        assertThat(METRIC.sentence(inlet)).contains("by 10.0 °C ");
        assertThat(US.sentence(inlet)).contains("by 18.0 °F ");
    }

    @Test
    void airOutsideAStandardIsToldInTheUnitOfItsQuantity() {
        AirState hot = new AirState(Pressure.ofKilopascals(99), Temperature.ofCelsius(50), Pressure.ofKilopascals(1));
        assertThat(new Iso1585().check(hot, Place.nowhere()))
                .isNotEmpty()
                .allSatisfy(finding -> assertThat(METRIC.sentence(finding))
                        .contains("outside the range of iso-1585")
                        .doesNotContain("?"));
        assertThat(METRIC.sentence(new Iso1585().check(hot, Place.nowhere()).get(0)))
                .startsWith("The temperature of 50 °C");
    }
}
