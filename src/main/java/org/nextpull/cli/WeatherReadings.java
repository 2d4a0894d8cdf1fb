package org.nextpull.cli;

import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.air.AirState;
import org.nextpull.air.DewPoint;
import org.nextpull.air.Moisture;
import org.nextpull.air.Weather;
import org.nextpull.plan.AirFacts;
import org.nextpull.unit.Pressure;
import org.nextpull.unit.Temperature;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** Readings of one weather as they come in; what is missing is taken from elsewhere or asked for. */
final class WeatherReadings {
    private final OneReading barometer = new OneReading("barometer");
    private final OneReading air = new OneReading("air temperature");
    private final OneReading water = new OneReading("water in the air");
    private Optional<AirReading> waterAs = Optional.empty();

    void take(AirReading reading, String option, double value) {
        switch (reading.kind()) {
            case BAROMETER -> barometer.take(option, reading.unit(), value);
            case AIR -> air.take(option, reading.unit(), value);
            case HUMIDITY, WET_BULB, DEW_POINT -> {
                water.take(option, reading.unit(), value);
                waterAs = Optional.of(reading);
            }
        }
    }

    /** The weather, with what a plan says where no option does. */
    Weather weather(CommandLine at, AirFacts plan) {
        double pascals = or(barometer.value(at), plan.baro().map(Pressure::pascals))
                .orElseGet(() -> barometer.required(at, "--baro-kpa, --baro-hpa or --baro-inhg"));
        double kelvins = or(temperature(at, air), plan.air().map(Temperature::kelvins))
                .orElseGet(() -> air.required(at, "--air-c or --air-f"));
        Moisture moisture = moisture(at)
                .or(() -> plan.humidity().stream()
                        .<Moisture>mapToObj(Moisture.RelativeHumidity::new)
                        .findFirst())
                .orElseThrow(() -> new ParameterException(
                        at,
                        "The water in the air is missing; give it by --humidity-percent, --wet-bulb-c, --wet-bulb-f, "
                                + "--dew-point-c or --dew-point-f."));
        return new Weather(Pressure.ofPascals(pascals), Temperature.ofKelvins(kelvins), moisture);
    }

    /** The weather, with what was before where nothing is given; water that is not given stays as much as it was. */
    Weather after(CommandLine at, AirState before) {
        double pascals = barometer.value(at).orElse(before.barometer().pascals());
        double kelvins = temperature(at, air).orElse(before.temperature().kelvins());
        Optional<Temperature> dewPoint = DewPoint.of(before.vapour());
        Optional<Moisture> given = moisture(at);
        if (given.isEmpty()
                && dewPoint.filter(point -> point.kelvins() > kelvins).isPresent()) {
            throw new ParameterException(
                    at,
                    "The later air is too cold for the water that the air held before; give its humidity under --later too.");
        }
        Moisture same = dewPoint.map(Moisture::ofDewPoint).orElse(Moisture.ofHumidityPercent(0));
        return new Weather(Pressure.ofPascals(pascals), Temperature.ofKelvins(kelvins), given.orElse(same));
    }

    private Optional<Moisture> moisture(CommandLine at) {
        if (waterAs.filter(AirReading::isTemperature).isPresent()) {
            temperature(at, water);
        }
        OptionalDouble given = water.value(at);
        return waterAs.map(reading -> moisture(reading, given.orElseThrow()));
    }

    private static Moisture moisture(AirReading reading, double si) {
        return switch (reading.kind()) {
            case WET_BULB -> Moisture.ofWetBulb(Temperature.ofKelvins(si));
            case DEW_POINT -> Moisture.ofDewPoint(Temperature.ofKelvins(si));
            default -> new Moisture.RelativeHumidity(si);
        };
    }

    private static OptionalDouble temperature(CommandLine at, OneReading reading) {
        OptionalDouble kelvins = reading.value(at);
        if (kelvins.isPresent() && kelvins.getAsDouble() < 0) {
            throw new ParameterException(at, reading.option() + " lies below absolute zero; check its unit.");
        }
        return kelvins;
    }

    private static OptionalDouble or(OptionalDouble first, Optional<Double> second) {
        return first.isPresent()
                ? first
                : second.stream().mapToDouble(Double::doubleValue).findFirst();
    }
}
