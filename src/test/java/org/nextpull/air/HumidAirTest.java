package org.nextpull.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.nextpull.ReferenceRow;
import org.nextpull.finding.Place;
import org.nextpull.unit.Pressure;
import org.nextpull.unit.Temperature;
import org.nextpull.unit.Unit;

/** Humid air against a public library of the ASHRAE formulas, and against the IAPWS formulation. */
class HumidAirTest {
    /** Same formula: the tables print nine digits. */
    private static final double SAME_FORMULA = 1e-6;
    /** Published rounding: wet bulb and dew point are printed to 1e-4 K. */
    private static final double PRINTED_KELVINS = 1e-4;

    static Stream<ReferenceRow> humidAir() {
        return ReferenceRow.read("humid_air_psychrolib.csv").stream();
    }

    static Stream<ReferenceRow> moistAir() {
        return humidAir().filter(row -> row.number("rh") > 0);
    }

    static Stream<ReferenceRow> wetBulbs() {
        return ReferenceRow.read("wetbulb.csv").stream();
    }

    static Stream<ReferenceRow> saturation() {
        return ReferenceRow.read("sat_vapour_pressure.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("humidAir")
    void relativeHumidityBecomesTheLibrarysVapourPressure(ReferenceRow row) {
        AirState air = air(row);
        double saturation = HylandWexler.saturationPressure(air.temperature()).pascals();
        assertThat(saturation).isCloseTo(row.number("psat_Pa"), relative(row.number("psat_Pa")));
        assertThat(air.vapour().pascals()).isCloseTo(row.number("pv_Pa"), relative(row.number("pv_Pa")));
        assertThat(air.dryPressure().pascals()).isCloseTo(row.number("pdry_Pa"), relative(row.number("pdry_Pa")));
        assertThat(air.relativeHumidity()).isCloseTo(row.number("rh"), within(1e-12));
    }

    /** The library holds the humidity ratio of dry air at 1e-7, so its densities carry 6e-8 of that. */
    @ParameterizedTest
    @MethodSource("humidAir")
    void densityIsTheLibrarys(ReferenceRow row) {
        assertThat(air(row).density()).isCloseTo(row.number("rho_kgm3"), relative(row.number("rho_kgm3")));
    }

    @ParameterizedTest
    @MethodSource("moistAir")
    void wetBulbDewPointAndHumidityRatioAreTheLibrarys(ReferenceRow row) {
        AirState air = air(row);
        assertThat(air.humidityRatio()).isCloseTo(row.number("w_kgkg"), relative(row.number("w_kgkg")));
        assertThat(WetBulb.of(air).celsius()).isCloseTo(row.number("twb_C"), within(10 * PRINTED_KELVINS));
        assertThat(HylandWexler.dewPoint(air.vapour()).orElseThrow().celsius())
                .isCloseTo(row.number("tdp_C"), within(10 * PRINTED_KELVINS));
    }

    @ParameterizedTest
    @MethodSource("wetBulbs")
    void aWetBulbBecomesTheLibrarysVapourPressure(ReferenceRow row) {
        Weather.Moisture wet = Weather.Moisture.ofWetBulb(Temperature.ofCelsius(row.number("twb_C")));
        AirState air = state(celsius(row), row.number("p_Pa"), wet);
        assertThat(air.vapour().pascals()).isCloseTo(row.number("pv_ashrae_Pa"), within(6e-4));
        assertThat(air.relativeHumidity()).isCloseTo(row.number("rh_ashrae"), within(1e-6));
    }

    /** A ventilated psychrometer by the WMO equation gives the same within 2 % above 45 % humidity, 3.5 % in drier air. */
    @ParameterizedTest
    @MethodSource("wetBulbs")
    void aWetBulbAgreesWithThePsychrometerEquation(ReferenceRow row) {
        Weather.Moisture wet = Weather.Moisture.ofWetBulb(Temperature.ofCelsius(row.number("twb_C")));
        AirState air = state(celsius(row), row.number("p_Pa"), wet);
        double tolerance = air.relativeHumidity() > 0.45 ? 2 : 3.5;
        assertThat(air.vapour().pascals()).isCloseTo(row.number("pv_wmo_Pa"), Percentage.withPercentage(tolerance));
    }

    @ParameterizedTest
    @MethodSource("saturation")
    void saturationPressureIsHylandAndWexlersAndNearTheSteamTables(ReferenceRow row) {
        double pascals = HylandWexler.saturationPressure(Temperature.ofCelsius(celsius(row)))
                .pascals();
        double printed = row.number("t_C") < 0.02 ? 0.1 : 0.00051;
        assertThat(pascals).isCloseTo(row.number("hw"), within(printed));
        assertThat(pascals).isCloseTo(row.number("if97"), Percentage.withPercentage(0.02));
    }

    /** ASHRAE Fundamentals, chapter 1, table 3, as quoted by the library's tests; claimed to 300 ppm. */
    @ParameterizedTest
    @CsvSource({"-20, 103.24", "-5, 401.74", "5, 872.6", "25, 3169.7", "50, 12351.3", "100, 101418.0"})
    void saturationPressureIsThatOfThePrintedTable(double celsius, double pascals) {
        assertThat(HylandWexler.saturationPressure(Temperature.ofCelsius(celsius))
                        .pascals())
                .isCloseTo(pascals, Percentage.withPercentage(0.03));
    }

    /** Worked examples quoted by the library's tests: 30/25 degC at 95461 Pa; 7 degC, 61 %, 100 kPa. */
    @Test
    void printedWetBulbExamplesAreMet() {
        AirState first = state(30, 95461, Weather.Moisture.ofWetBulb(Temperature.ofCelsius(25)));
        assertThat(first.humidityRatio()).isCloseTo(0.0192281274, Percentage.withPercentage(0.03));
        AirState second = state(7, 100_000, Weather.Moisture.ofHumidityPercent(61));
        assertThat(WetBulb.of(second).celsius()).isCloseTo(3.926674, within(1e-3));
    }

    @Test
    void theThreeWaysToMeasureWaterMeetInOneState() {
        for (double percent : List.of(15.0, 40.0, 85.0, 100.0)) {
            AirState humid = state(28, 97_300, Weather.Moisture.ofHumidityPercent(percent));
            AirState wet = state(28, 97_300, Weather.Moisture.ofWetBulb(WetBulb.of(humid)));
            AirState dewy = state(
                    28,
                    97_300,
                    Weather.Moisture.ofDewPoint(
                            HylandWexler.dewPoint(humid.vapour()).orElseThrow()));
            assertThat(wet.vapour().pascals()).isCloseTo(humid.vapour().pascals(), within(1e-6));
            assertThat(dewy.vapour().pascals()).isCloseTo(humid.vapour().pascals(), within(1e-6));
        }
    }

    @Test
    void dryAirHasNoDewPoint() {
        assertThat(HylandWexler.dewPoint(Pressure.ofPascals(0))).isEmpty();
    }

    @Test
    void theFormulaRefusesTemperaturesBeyondItsRange() {
        assertThatThrownBy(() -> HylandWexler.saturationPressure(Temperature.ofCelsius(201)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> HylandWexler.saturationPressure(Temperature.ofCelsius(-101)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** The tables print 60 degF as 15.5556 degC but were computed at the exact value. */
    private static double celsius(ReferenceRow row) {
        double printed = row.number("t_C");
        return printed == 15.5556 ? Unit.CELSIUS.fromSi(Unit.FAHRENHEIT.toSi(60)) : printed;
    }

    private static AirState air(ReferenceRow row) {
        return state(celsius(row), row.number("p_Pa"), new Weather.Moisture.RelativeHumidity(row.number("rh")));
    }

    private static AirState state(double celsius, double pascals, Weather.Moisture moisture) {
        return new Weather(Pressure.ofPascals(pascals), Temperature.ofCelsius(celsius), moisture)
                .state(Place.nowhere())
                .value()
                .orElseThrow();
    }

    private static Offset<Double> relative(double expected) {
        return within(SAME_FORMULA * Math.abs(expected) + 1e-12);
    }
}
