package org.nextpull.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.unit.Pressure;
import org.nextpull.unit.Temperature;

class WeatherTest {
    private static final Place PLACE = Place.inFile("plan.toml").withKey("air.humidity_percent");

    @Test
    void impossibleHumidityIsRefused() {
        assertThat(codes(weather(25, 100, Weather.Moisture.ofHumidityPercent(101))))
                .containsExactly(FindingCode.AIR_HUMIDITY_OUT_OF_RANGE);
        assertThat(codes(weather(25, 100, Weather.Moisture.ofHumidityPercent(-1))))
                .containsExactly(FindingCode.AIR_HUMIDITY_OUT_OF_RANGE);
        assertThat(codes(weather(25, 100, Weather.Moisture.ofHumidityPercent(Double.NaN))))
                .containsExactly(FindingCode.AIR_HUMIDITY_OUT_OF_RANGE);
    }

    @Test
    void humidityThatLooksLikeAFractionIsUsedWithAWarning() {
        Outcome<AirState> outcome =
                weather(25, 100, Weather.Moisture.ofHumidityPercent(0.6)).state(PLACE);
        assertThat(outcome.value()).isPresent();
        assertThat(outcome.findings())
                .extracting(Finding::code)
                .containsExactly(FindingCode.AIR_HUMIDITY_LOOKS_LIKE_FRACTION);
    }

    @Test
    void impossibleWetBulbsAndDewPointsAreRefused() {
        assertThat(codes(weather(20, 100, Weather.Moisture.ofWetBulb(Temperature.ofCelsius(20.1)))))
                .containsExactly(FindingCode.AIR_WET_BULB_ABOVE_DRY_BULB);
        assertThat(codes(weather(20, 100, Weather.Moisture.ofWetBulb(Temperature.ofCelsius(2)))))
                .containsExactly(FindingCode.AIR_WET_BULB_TOO_LOW);
        assertThat(codes(weather(20, 100, Weather.Moisture.ofWetBulb(Temperature.ofKelvins(20)))))
                .containsExactly(FindingCode.AIR_WET_BULB_TOO_LOW);
        assertThat(codes(weather(20, 100, Weather.Moisture.ofDewPoint(Temperature.ofCelsius(21)))))
                .containsExactly(FindingCode.AIR_DEW_POINT_ABOVE_DRY_BULB);
        assertThat(codes(weather(20, 100, Weather.Moisture.ofDewPoint(Temperature.ofKelvins(20)))))
                .containsExactly(FindingCode.AIR_DEW_POINT_TOO_LOW);
    }

    @Test
    void readingsInTheWrongUnitAreAllNamedAtOnce() {
        Weather inchesAndKelvins = weather(298, 29.92, Weather.Moisture.ofHumidityPercent(50));
        Outcome<AirState> outcome = inchesAndKelvins.state(PLACE);
        assertThat(outcome.findings())
                .extracting(Finding::code)
                .containsExactly(FindingCode.AIR_BAROMETER_IMPLAUSIBLE, FindingCode.AIR_TEMPERATURE_IMPLAUSIBLE);
        assertThat(outcome.findings())
                .allSatisfy(finding -> assertThat(finding.place()).isEqualTo(PLACE));
    }

    @Test
    void anAirStateHoldsLessVapourThanPressure() {
        assertThatThrownBy(() ->
                        new AirState(Pressure.ofPascals(1000), Temperature.ofCelsius(20), Pressure.ofPascals(1000)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> AirState.dry(Pressure.ofPascals(0), Temperature.ofCelsius(20)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static List<FindingCode> codes(Weather weather) {
        Outcome<AirState> outcome = weather.state(PLACE);
        assertThat(outcome.isFailed()).isTrue();
        return outcome.findings().stream().map(Finding::code).toList();
    }

    private static Weather weather(double celsius, double kilopascals, Weather.Moisture moisture) {
        return new Weather(Pressure.ofKilopascals(kilopascals), Temperature.ofCelsius(celsius), moisture);
    }
}
