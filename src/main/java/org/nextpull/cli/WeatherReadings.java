package org.nextpull.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.nextpull.air.AirState;
import org.nextpull.air.HylandWexler;
import org.nextpull.air.PressureCheck;
import org.nextpull.air.Weather;
import org.nextpull.plan.SweepPlan;
import org.nextpull.unit.Pressure;
import org.nextpull.unit.Quantity;
import org.nextpull.unit.Temperature;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** Readings of one weather, each with its unit: options of a command, or the same names behind {@code --later}. */
final class WeatherReadings {
    private static final String BAROMETER = "baro";
    private static final String AIR = "air";
    private static final String HUMIDITY = "humidity";
    private static final String WET_BULB = "wet-bulb";
    private static final String DEW_POINT = "dew-point";
    private static final List<String> NAMES = List.of(BAROMETER, AIR, HUMIDITY, WET_BULB, DEW_POINT);
    private static final double LOWEST_M = -500;
    private static final double HIGHEST_M = 6000;

    private final Map<String, Amount> given;
    private final String prefix;

    @Option(
            names = "--altitude",
            order = -1,
            paramLabel = "AMOUNT",
            description = "Altitude of the dyno, 240m or 790ft, to check the barometer.")
    private Optional<Amount> altitude = Optional.empty();

    /** The options of a command. */
    WeatherReadings() {
        this(new LinkedHashMap<>(), "--");
    }

    private WeatherReadings(Map<String, Amount> given, String prefix) {
        this.given = given;
        this.prefix = prefix;
    }

    /**
     * A reading under its name.
     *
     * @param name such as {@code air}
     * @param amount the reading
     */
    record Named(String name, Amount amount) {}

    /** Readings of a later pull, each named once. */
    static WeatherReadings later(CommandLine at, List<Named> later) {
        WeatherReadings readings = new WeatherReadings(new LinkedHashMap<>(), "--later ");
        for (Named one : later) {
            if (!NAMES.contains(one.name())) {
                throw new ParameterException(
                        at,
                        "--later knows no reading '" + one.name() + "'; it knows " + String.join(", ", NAMES) + ".");
            }
            if (readings.given.putIfAbsent(one.name(), one.amount()) != null) {
                throw new ParameterException(at, "--later gives " + one.name() + " twice; give it once, in one unit.");
            }
        }
        return readings;
    }

    @Option(
            names = "--baro",
            order = -6,
            paramLabel = "AMOUNT",
            description = "Barometer at the dyno (not reduced to sea level), with its unit: 98.5kPa, 985hPa, 29.1inHg.")
    void baro(Amount amount) {
        given.put(BAROMETER, amount);
    }

    @Option(
            names = "--air",
            order = -5,
            paramLabel = "AMOUNT",
            description = "Air that the engine breathes: 30C or 86F.")
    void air(Amount amount) {
        given.put(AIR, amount);
    }

    @Option(names = "--humidity", order = -4, paramLabel = "PERCENT", description = "Relative humidity: 60%%.")
    void humidity(Amount amount) {
        given.put(HUMIDITY, amount);
    }

    @Option(names = "--wet-bulb", order = -3, paramLabel = "AMOUNT", description = "Or: wet bulb, 21C or 70F.")
    void wetBulb(Amount amount) {
        given.put(WET_BULB, amount);
    }

    @Option(names = "--dew-point", order = -2, paramLabel = "AMOUNT", description = "Or: dew point, 15C or 59F.")
    void dewPoint(Amount amount) {
        given.put(DEW_POINT, amount);
    }

    /** The weather, with what a plan says where no option does. */
    Weather weather(CommandLine at, SweepPlan.AirFacts plan) {
        Pressure barometer =
                barometer(at).or(plan::baro).orElseThrow(() -> missing("barometer", BAROMETER, Quantity.PRESSURE, at));
        Temperature air =
                air(at).or(plan::air).orElseThrow(() -> missing("air temperature", AIR, Quantity.TEMPERATURE, at));
        Weather.Moisture moisture = moisture(at)
                .or(() -> plan.humidity().stream()
                        .<Weather.Moisture>mapToObj(Weather.Moisture.RelativeHumidity::new)
                        .findFirst())
                .orElseThrow(() -> new ParameterException(
                        at, "The water in the air is missing; give it by --humidity, --wet-bulb or --dew-point."));
        return new Weather(barometer, air, moisture);
    }

    private ParameterException missing(String what, String name, Quantity quantity, CommandLine at) {
        return new Amount.Wanted(what, prefix + name, quantity).missing(at);
    }

    /** The weather, with what was before where nothing is given; water that is not given stays as much as it was. */
    Weather after(CommandLine at, AirState before) {
        Temperature air = air(at).orElse(before.temperature());
        Optional<Temperature> dewPoint = HylandWexler.dewPoint(before.vapour());
        Optional<Weather.Moisture> water = moisture(at);
        if (water.isEmpty()
                && dewPoint.filter(point -> point.kelvins() > air.kelvins()).isPresent()) {
            throw new ParameterException(
                    at,
                    "The later air is too cold for the water that the air held before; give its humidity under --later too.");
        }
        Weather.Moisture same =
                dewPoint.map(Weather.Moisture::ofDewPoint).orElse(Weather.Moisture.ofHumidityPercent(0));
        return new Weather(barometer(at).orElse(before.barometer()), air, water.orElse(same));
    }

    /** The barometer and what it can be checked against. */
    PressureCheck.Readings pressures(CommandLine at, Weather weather) {
        PressureCheck.Readings known = PressureCheck.Readings.none().withGiven(weather.barometer());
        Optional<Double> metres = altitude.map(amount -> amount.si(at, "--altitude", Quantity.LENGTH));
        if (metres.filter(m -> m < LOWEST_M || m > HIGHEST_M).isPresent()) {
            throw new ParameterException(at, "--altitude must lie between -500 and 6000 m.");
        }
        return metres.map(known::withAltitude).orElse(known);
    }

    private Optional<Pressure> barometer(CommandLine at) {
        return si(at, BAROMETER, Quantity.PRESSURE).map(Pressure::ofPascals);
    }

    private Optional<Temperature> air(CommandLine at) {
        return temperature(at, AIR);
    }

    private Optional<Temperature> temperature(CommandLine at, String name) {
        return si(at, name, Quantity.TEMPERATURE).map(Temperature::ofKelvins);
    }

    private Optional<Double> si(CommandLine at, String name, Quantity quantity) {
        return Optional.ofNullable(given.get(name)).map(amount -> amount.si(at, prefix + name, quantity));
    }

    private Optional<Weather.Moisture> moisture(CommandLine at) {
        List<String> water = given.keySet().stream()
                .filter(List.of(HUMIDITY, WET_BULB, DEW_POINT)::contains)
                .toList();
        if (water.size() > 1) {
            throw new ParameterException(
                    at,
                    prefix + String.join(" and " + prefix, water)
                            + " both give the water in the air; give it once, in one unit.");
        }
        return temperature(at, WET_BULB)
                .map(Weather.Moisture::ofWetBulb)
                .or(() -> temperature(at, DEW_POINT).map(Weather.Moisture::ofDewPoint))
                .or(() -> si(at, HUMIDITY, Quantity.FRACTION).map(Weather.Moisture.RelativeHumidity::new));
    }
}
