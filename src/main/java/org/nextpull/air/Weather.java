package org.nextpull.air;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.air.Weather.Moisture.DewPointReading;
import org.nextpull.air.Weather.Moisture.RelativeHumidity;
import org.nextpull.air.Weather.Moisture.WetBulbReading;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.unit.Pressure;
import org.nextpull.unit.Span;
import org.nextpull.unit.Temperature;

/**
 * Weather as read off instruments, checked before it becomes an {@link AirState}.
 *
 * @param barometer station pressure
 * @param temperature dry bulb of the inlet air
 * @param moisture water in the air, as measured
 */
public record Weather(Pressure barometer, Temperature temperature, Moisture moisture) {
    /** Barometers that people breathe at: 4,000 m up to the highest pressure on record; outside it a unit was mistaken. */
    private static final Span BAROMETER_PASCALS = Span.of(60_000, 110_000);
    /** Air temperatures at which an engine is run: -40 to 80 degC. */
    private static final Span AIR_KELVINS = Span.of(233.15, 353.15);

    /**
     * The air state, or what is wrong with the readings: an implausible barometer or temperature (both are said at once), a humidity
     * outside 0 to 1, a wet bulb or dew point that no air has at that temperature. A humidity up to 1 % gives the air and a warning.
     *
     * @param place what the findings are about
     */
    public Outcome<AirState> state(Place place) {
        List<Finding> findings = new ArrayList<>();
        if (!BAROMETER_PASCALS.contains(barometer.pascals())) {
            findings.add(implausible(FindingCode.AIR_BAROMETER_IMPLAUSIBLE, barometer.pascals(), BAROMETER_PASCALS)
                    .at(place));
        }
        if (!AIR_KELVINS.contains(temperature.kelvins())) {
            findings.add(implausible(FindingCode.AIR_TEMPERATURE_IMPLAUSIBLE, temperature.kelvins(), AIR_KELVINS)
                    .at(place));
        }
        if (!findings.isEmpty()) {
            return Outcome.failed(findings);
        }
        return vapour(place).map(vapour -> new AirState(barometer, temperature, vapour));
    }

    private static Finding implausible(FindingCode code, double value, Span usual) {
        return Finding.error(
                code,
                Place.nowhere(),
                Detail.of("value", value),
                Detail.of("low", usual.low()),
                Detail.of("high", usual.high()));
    }

    private Outcome<Pressure> vapour(Place place) {
        if (moisture instanceof RelativeHumidity humidity) {
            return fromHumidity(humidity.fraction(), place);
        }
        if (moisture instanceof WetBulbReading reading) {
            return fromWetBulb(reading.temperature(), place);
        }
        return fromDewPoint(((DewPointReading) moisture).temperature(), place);
    }

    private Outcome<Pressure> fromHumidity(double fraction, Place place) {
        if (!(fraction >= 0 && fraction <= 1)) {
            List<Detail> details = Double.isFinite(fraction) ? List.of(Detail.of("humidity", fraction)) : List.of();
            return Outcome.failed(
                    Finding.error(FindingCode.AIR_HUMIDITY_OUT_OF_RANGE, place, details.toArray(Detail[]::new)));
        }
        double saturation = HylandWexler.saturationPressure(temperature).pascals();
        return Outcome.of(
                Pressure.ofPascals(fraction * saturation),
                suspicious(fraction, place).stream().toList());
    }

    /** 0.6 % is hardly ever true: somebody wrote a fraction where percent was asked. */
    private static Optional<Finding> suspicious(double fraction, Place place) {
        return fraction > 0 && fraction <= 0.01
                ? Optional.of(Finding.warning(
                        FindingCode.AIR_HUMIDITY_LOOKS_LIKE_FRACTION, place, Detail.of("humidity", fraction)))
                : Optional.empty();
    }

    private Outcome<Pressure> fromWetBulb(Temperature wetBulb, Place place) {
        if (wetBulb.kelvins() > temperature.kelvins()) {
            return Outcome.failed(against(FindingCode.AIR_WET_BULB_ABOVE_DRY_BULB, "wet_bulb", wetBulb, place));
        }
        double ratio = HylandWexler.VALID_KELVINS.contains(wetBulb.kelvins())
                ? WetBulb.humidityRatio(temperature, wetBulb, barometer)
                : -1;
        return ratio < 0
                ? Outcome.failed(against(FindingCode.AIR_WET_BULB_TOO_LOW, "wet_bulb", wetBulb, place))
                : Outcome.of(WetBulb.vapourPressure(ratio, barometer));
    }

    private Outcome<Pressure> fromDewPoint(Temperature dewPoint, Place place) {
        if (dewPoint.kelvins() > temperature.kelvins()) {
            return Outcome.failed(against(FindingCode.AIR_DEW_POINT_ABOVE_DRY_BULB, "dew_point", dewPoint, place));
        }
        if (!HylandWexler.VALID_KELVINS.contains(dewPoint.kelvins())) {
            return Outcome.failed(against(FindingCode.AIR_DEW_POINT_TOO_LOW, "dew_point", dewPoint, place));
        }
        return Outcome.of(HylandWexler.saturationPressure(dewPoint));
    }

    private Finding against(FindingCode code, String name, Temperature reading, Place place) {
        return Finding.error(
                code, place, Detail.of(name, reading.kelvins()), Detail.of("dry_bulb", temperature.kelvins()));
    }

    /** How somebody measured the water in the air. */
    public sealed interface Moisture {
        /**
         * Relative humidity.
         *
         * @param fraction dimensionless, 0 to 1; 0.6 for 60 %. Not checked here: {@link Weather#state} says what is wrong with it
         */
        record RelativeHumidity(double fraction) implements Moisture {}

        /** Reading of a thermometer with a wet sleeve in moving air. */
        record WetBulbReading(Temperature temperature) implements Moisture {}

        /** Temperature at which the air is saturated. */
        record DewPointReading(Temperature temperature) implements Moisture {}

        /** Relative humidity in percent, 0 to 100. Not checked here: {@link Weather#state} says what is wrong with it. */
        static Moisture ofHumidityPercent(double percent) {
            return new RelativeHumidity(percent / 100);
        }

        static Moisture ofWetBulb(Temperature temperature) {
            return new WetBulbReading(temperature);
        }

        static Moisture ofDewPoint(Temperature temperature) {
            return new DewPointReading(temperature);
        }
    }
}
