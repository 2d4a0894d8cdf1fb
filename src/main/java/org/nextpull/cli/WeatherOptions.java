package org.nextpull.cli;

import org.nextpull.air.PressureReadings;
import org.nextpull.air.Weather;
import org.nextpull.plan.AirFacts;
import org.nextpull.unit.Unit;
import picocli.CommandLine;
import picocli.CommandLine.Option;

/** The options of a weather: barometer, air and moisture, each by one of several. */
final class WeatherOptions {
    private final WeatherReadings readings = new WeatherReadings();
    private final OneReading altitude = new OneReading("altitude");

    @Option(
            names = "--baro-kpa",
            paramLabel = "N",
            description = "Barometer at the dyno (not reduced to sea level) in kPa.")
    void baroKpa(double value) {
        take(AirReading.BARO_KPA, value);
    }

    @Option(names = "--baro-hpa", paramLabel = "N", description = "Barometer in hPa, which is mbar.")
    void baroHpa(double value) {
        take(AirReading.BARO_HPA, value);
    }

    @Option(names = "--baro-inhg", paramLabel = "N", description = "Barometer in inches of mercury.")
    void baroInhg(double value) {
        take(AirReading.BARO_INHG, value);
    }

    @Option(names = "--air-c", paramLabel = "N", description = "Air that the engine breathes, in degC.")
    void airC(double value) {
        take(AirReading.AIR_C, value);
    }

    @Option(names = "--air-f", paramLabel = "N", description = "Air that the engine breathes, in degF.")
    void airF(double value) {
        take(AirReading.AIR_F, value);
    }

    @Option(names = "--humidity-percent", paramLabel = "N", description = "Relative humidity, 60 for 60 %%.")
    void humidityPercent(double value) {
        take(AirReading.HUMIDITY_PERCENT, value);
    }

    @Option(names = "--wet-bulb-c", paramLabel = "N", description = "Or: wet bulb in degC.")
    void wetBulbC(double value) {
        take(AirReading.WET_BULB_C, value);
    }

    @Option(names = "--wet-bulb-f", paramLabel = "N", description = "Wet bulb in degF.")
    void wetBulbF(double value) {
        take(AirReading.WET_BULB_F, value);
    }

    @Option(names = "--dew-point-c", paramLabel = "N", description = "Or: dew point in degC.")
    void dewPointC(double value) {
        take(AirReading.DEW_POINT_C, value);
    }

    @Option(names = "--dew-point-f", paramLabel = "N", description = "Dew point in degF.")
    void dewPointF(double value) {
        take(AirReading.DEW_POINT_F, value);
    }

    @Option(
            names = "--altitude-m",
            paramLabel = "N",
            description = "Altitude of the dyno in m, to check the barometer.")
    void altitudeM(double value) {
        altitude.take("--altitude-m", Unit.METRE, value);
    }

    @Option(names = "--altitude-ft", paramLabel = "N", description = "Altitude of the dyno in ft.")
    void altitudeFt(double value) {
        altitude.take("--altitude-ft", Unit.FOOT, value);
    }

    private void take(AirReading reading, double value) {
        readings.take(reading, "--" + reading.id(), value);
    }

    Weather weather(CommandLine at, AirFacts plan) {
        return readings.weather(at, plan);
    }

    /** The barometer and what it can be checked against. */
    PressureReadings pressures(CommandLine at, Weather weather) {
        PressureReadings known = PressureReadings.none().withGiven(weather.barometer());
        altitude.value(at);
        altitude.checkSi(at, metres -> metres >= -500 && metres <= 6000, "lie between -500 and 6000 m");
        return altitude.isGiven() ? known.withAltitude(altitude.value(at).orElseThrow()) : known;
    }
}
