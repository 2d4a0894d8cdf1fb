package org.nextpull.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.nextpull.air.WeatherChange.Cause;
import org.nextpull.finding.Place;
import org.nextpull.unit.Pressure;
import org.nextpull.unit.Temperature;

class AirSheetTest {
    private static final AirState MORNING = air(12, 101.2, 80);
    private static final AirState NOON = air(29, 100.6, 45);

    /** ISO 2533 tables of the standard atmosphere, from memory: pressure in Pa and density in kg/m3 at geopotential altitudes. */
    @ParameterizedTest
    @CsvSource({"0, 101325, 1.2250", "1000, 89874.6, 1.11164", "2000, 79495.2, 1.00649", "5000, 54019.9, 0.73612"})
    void theStandardAtmosphereIsThatOfTheTables(double metres, double pascals, double density) {
        Pressure pressure = StandardAtmosphere.pressureAt(metres);
        assertThat(pressure.pascals()).isCloseTo(pascals, within(0.2));
        assertThat(StandardAtmosphere.altitudeOf(pressure)).isCloseTo(metres, within(1e-6));
        AirState standard = AirState.dry(pressure, Temperature.ofKelvins(288.15 - 0.0065 * metres));
        assertThat(standard.density()).isCloseTo(density, Percentage.withPercentage(0.01));
        assertThat(StandardAtmosphere.densityAltitude(standard)).isCloseTo(metres, within(1.0));
    }

    /** Rule of thumb of the trade, no source: about 120 ft of density altitude for each degree Celsius. */
    @Test
    void warmAndHumidAirIsThinAir() {
        double warmer = StandardAtmosphere.densityAltitude(air(25, 101.325, 0))
                - StandardAtmosphere.densityAltitude(air(15, 101.325, 0));
        assertThat(warmer).isCloseTo(10 * 120 * 0.3048, Percentage.withPercentage(12));
        assertThat(StandardAtmosphere.densityAltitude(air(30, 101.325, 90)))
                .isGreaterThan(StandardAtmosphere.densityAltitude(air(30, 101.325, 10)) + 100);
    }

    @Test
    void aSheetHoldsEveryStandardSideBySide() {
        AirSheet sheet = AirSheet.of(NOON, Place.nowhere());
        assertThat(sheet.corrections()).extracting(Correction::standard).isEqualTo(CorrectionStandard.all());
        assertThat(sheet.wetBulb().kelvins())
                .isBetween(
                        sheet.dewPoint().orElseThrow().kelvins(),
                        NOON.temperature().kelvins());
        assertThat(sheet.corrections().get(0).factor()).isEqualTo(1);
        assertThat(sheet.changeTo(MORNING)).hasSize(5);
    }

    @ParameterizedTest
    @EnumSource(Cause.class)
    void theCausesOfAChangeMultiplyToTheWholeAndPointTheRightWay(Cause cause) {
        WeatherChange change = WeatherChange.between(MORNING, NOON, new Iso1585());
        double whole = new Iso1585().factor(MORNING) / new Iso1585().factor(NOON);
        assertThat(change.rawTorqueRatio()).isCloseTo(whole, within(1e-12));
        assertThat(change.rawTorquePercent()).isCloseTo(100 * (whole - 1), within(1e-9));
        assertThat(change.ratios().get(cause)).isLessThan(1);
        double product = Arrays.stream(Cause.values())
                .mapToDouble(each -> change.ratios().getOrDefault(each, 0.0))
                .reduce(1, (a, b) -> a * b);
        assertThat(product).isCloseTo(whole, within(1e-12));
    }

    /** By ISO 1585: 10 K more cost 0.6 x 10/298 = 2 % of torque, 1 kPa less 1.2 %. */
    @Test
    void aDaysWeatherCostsWhatTheExponentsSay() {
        AirState reference = air(25, 100, 30);
        AirState warmer = new AirState(reference.barometer(), Temperature.ofCelsius(35), reference.vapour());
        AirState lower = new AirState(Pressure.ofKilopascals(99), reference.temperature(), reference.vapour());
        assertThat(WeatherChange.between(reference, warmer, new Iso1585()).rawTorquePercent())
                .isCloseTo(-2.0, within(0.05));
        assertThat(WeatherChange.between(reference, lower, new Iso1585()).rawTorquePercent())
                .isCloseTo(-1.2, within(0.05));
    }

    private static AirState air(double celsius, double kilopascals, double percent) {
        return new Weather(
                        Pressure.ofKilopascals(kilopascals),
                        Temperature.ofCelsius(celsius),
                        Weather.Moisture.ofHumidityPercent(percent))
                .state(Place.nowhere())
                .value()
                .orElseThrow();
    }
}
