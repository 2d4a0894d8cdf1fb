package org.nextpull.air;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.unit.Pressure;

/**
 * Recognises a barometer that cannot be the station pressure, above all the common mistake of taking the sea-level pressure of a weather
 * report: at 400 m it is 5 % too high and so is every corrected figure 5 % too low. Each rule is a comparison of two readings; below
 * about 100 m the mistake is too small to see. The bounds are common practice, no source; pressure over altitude is that of
 * {@link StandardAtmosphere}.
 */
public final class PressureCheck {
    /** Two barometers of one place agree within this, in Pa. */
    private static final double BAROMETERS_AGREE = 500;
    /** A barometer and a manifold sensor at rest agree within this, in Pa: 1 % of a 100 kPa sensor. */
    private static final double SENSORS_AGREE = 1000;
    /** Tuned intakes lift the manifold pressure above the barometer by no more than this fraction. */
    private static final double MOST_TUNING_GAIN = 0.02;
    /** Throttle, filter and ports lose no more than this fraction at full load. */
    private static final double MOST_INTAKE_LOSS = 0.08;
    /** Sea-level pressure stays within this of 101.325 kPa in all but extreme weather, in Pa. */
    private static final double WEATHER = 4000;
    /** So close to 101.325 kPa is not weather but the standard atmosphere written down, in Pa. */
    private static final double WRITTEN_DOWN = 30;
    /** Height above which the written-down standard atmosphere is wrong by 1 %, in m. */
    private static final double WORTH_SAYING_METRES = 100;

    private PressureCheck() {}

    /**
     * Every disagreement among the readings; empty when they agree or there are not two to compare.
     *
     * @param place what the findings are about
     * @throws IllegalArgumentException at an altitude so high that the standard atmosphere has no pressure there (44 km)
     */
    public static List<Finding> of(Readings readings, Place place) {
        List<Finding> findings = new ArrayList<>();
        readings.given()
                .flatMap(given -> readings.logged().flatMap(logged -> againstLogger(given, logged)))
                .ifPresent(findings::add);
        readings.barometer()
                .flatMap(barometer -> readings.manifoldAtRest().flatMap(rest -> againstRest(barometer, rest)))
                .ifPresent(findings::add);
        readings.barometer()
                .flatMap(barometer -> readings.manifoldAtFullLoad().flatMap(full -> againstFullLoad(barometer, full)))
                .ifPresent(findings::add);
        readings.altitudeMetres()
                .ifPresent(altitude -> readings.barometer()
                        .flatMap(barometer -> againstAltitude(barometer, altitude))
                        .ifPresent(findings::add));
        return findings.stream().map(finding -> finding.at(place)).toList();
    }

    private static Optional<Finding> againstLogger(Pressure given, Pressure logged) {
        double difference = given.pascals() - logged.pascals();
        if (Math.abs(difference) <= BAROMETERS_AGREE) {
            return Optional.empty();
        }
        return Optional.of(
                difference > SENSORS_AGREE && isOfSeaLevel(given)
                        ? seaLevel(given, logged)
                        : pair(FindingCode.AIR_BAROMETERS_DIFFER, given, logged));
    }

    private static Optional<Finding> againstRest(Pressure barometer, Pressure atRest) {
        double difference = barometer.pascals() - atRest.pascals();
        if (Math.abs(difference) <= SENSORS_AGREE) {
            return Optional.empty();
        }
        return Optional.of(
                difference > 0 && isOfSeaLevel(barometer)
                        ? seaLevel(barometer, atRest)
                        : pair(FindingCode.AIR_MANIFOLD_AT_REST_DIFFERS, barometer, atRest));
    }

    private static Optional<Finding> againstFullLoad(Pressure barometer, Pressure fullLoad) {
        double ratio = fullLoad.pascals() / barometer.pascals();
        if (ratio > 1 + MOST_TUNING_GAIN) {
            return Optional.of(pair(FindingCode.AIR_MANIFOLD_ABOVE_BAROMETER, barometer, fullLoad));
        }
        return ratio < 1 - MOST_INTAKE_LOSS
                ? Optional.of(pair(FindingCode.AIR_MANIFOLD_FAR_BELOW_BAROMETER, barometer, fullLoad))
                : Optional.empty();
    }

    private static Optional<Finding> againstAltitude(Pressure barometer, double altitude) {
        Pressure usual = StandardAtmosphere.pressureAt(altitude);
        double ratio = usual.pascals() / seaLevelPascals();
        double difference = barometer.pascals() - usual.pascals();
        boolean writtenDown =
                altitude >= WORTH_SAYING_METRES && Math.abs(barometer.pascals() - seaLevelPascals()) <= WRITTEN_DOWN;
        boolean impossible = Math.abs(difference) > WEATHER * ratio;
        if (writtenDown || (impossible && difference > 0 && isOfSeaLevel(barometer))) {
            return Optional.of(seaLevel(barometer, Pressure.ofPascals(barometer.pascals() * ratio)));
        }
        return impossible
                ? Optional.of(Finding.warning(
                        FindingCode.AIR_BAROMETER_NOT_OF_ALTITUDE,
                        Place.nowhere(),
                        Detail.of("barometer", barometer.pascals()),
                        Detail.of("altitude", altitude),
                        Detail.of("low", usual.pascals() - WEATHER * ratio),
                        Detail.of("high", usual.pascals() + WEATHER * ratio)))
                : Optional.empty();
    }

    private static boolean isOfSeaLevel(Pressure pressure) {
        return Math.abs(pressure.pascals() - seaLevelPascals()) <= WEATHER;
    }

    private static double seaLevelPascals() {
        return StandardAtmosphere.seaLevelPressure().pascals();
    }

    private static Finding seaLevel(Pressure barometer, Pressure station) {
        double ratio = station.pascals() / barometer.pascals();
        Pressure asStandard = Pressure.ofPascals(ratio * seaLevelPascals());
        return Finding.warning(
                FindingCode.AIR_BAROMETER_LOOKS_SEA_LEVEL,
                Place.nowhere(),
                Detail.of("barometer", barometer.pascals()),
                Detail.of("station", station.pascals()),
                Detail.of("altitude", StandardAtmosphere.altitudeOf(asStandard)));
    }

    private static Finding pair(FindingCode code, Pressure barometer, Pressure other) {
        return Finding.warning(
                code,
                Place.nowhere(),
                Detail.of("barometer", barometer.pascals()),
                Detail.of("other", other.pascals()));
    }

    /**
     * Whatever is known about the pressure of a day, for {@link PressureCheck}; all may be absent.
     *
     * @param given barometer that somebody typed in
     * @param logged median of the logger's barometer
     * @param manifoldAtRest manifold pressure with the engine stopped
     * @param manifoldAtFullLoad manifold pressure at full load of a naturally aspirated engine; leave it out for a boosted one
     * @param altitudeMetres altitude of the dyno above sea level in m; the standard atmosphere has one from -5,000 to 11,000 m
     */
    public record Readings(
            Optional<Pressure> given,
            Optional<Pressure> logged,
            Optional<Pressure> manifoldAtRest,
            Optional<Pressure> manifoldAtFullLoad,
            OptionalDouble altitudeMetres) {

        public static Readings none() {
            return new Readings(
                    Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), OptionalDouble.empty());
        }

        public Readings withGiven(Pressure pressure) {
            return new Readings(Optional.of(pressure), logged, manifoldAtRest, manifoldAtFullLoad, altitudeMetres);
        }

        /**
         * The same with the altitude of the dyno.
         *
         * @param metres above sea level, from -5,000 to 11,000
         */
        public Readings withAltitude(double metres) {
            return new Readings(given, logged, manifoldAtRest, manifoldAtFullLoad, OptionalDouble.of(metres));
        }

        /** The barometer that will be used: the logger's, else the one typed in. */
        public Optional<Pressure> barometer() {
            return logged.or(() -> given);
        }
    }
}
