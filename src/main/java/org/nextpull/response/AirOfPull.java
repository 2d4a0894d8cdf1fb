package org.nextpull.response;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.nextpull.air.AirState;
import org.nextpull.air.Weather;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.math.Series;
import org.nextpull.plan.SweepPlan;
import org.nextpull.unit.Pressure;
import org.nextpull.unit.Temperature;

/** The air of a pull: medians of the ambient channels over it, and the plan's values where the log has none. */
final class AirOfPull {
    /** A sensor reads up to this far beyond dry or saturated air, as a fraction: 5 %, the accuracy of common sensors. */
    private static final double SENSOR_BEYOND = 0.05;

    private static final String BAROMETER = "barometer";
    private static final String INLET_AIR = "inlet air temperature";
    private static final String HUMIDITY = "humidity";

    private AirOfPull() {}

    /**
     * The air state, or which reading is missing or wrong.
     *
     * @param samples samples of the pull
     * @param facts the plan's readings
     * @param needsHumidity whether the standard works with dry pressure; without need, air of unknown humidity counts as dry
     */
    static Outcome<AirState> of(Samples samples, SweepPlan.AirFacts facts, boolean needsHumidity, Place place) {
        OptionalDouble baro = median(samples, Role.BAROMETER, facts.baro().map(Pressure::pascals));
        OptionalDouble temperature =
                median(samples, Role.INLET_AIR_TEMPERATURE, facts.air().map(Temperature::kelvins));
        OptionalDouble humidity = median(
                samples,
                Role.HUMIDITY,
                facts.humidity().isPresent() ? Optional.of(facts.humidity().getAsDouble()) : Optional.empty());
        if (baro.isEmpty()) {
            return missing(BAROMETER, place);
        }
        if (temperature.isEmpty()) {
            return missing(INLET_AIR, place);
        }
        if (humidity.isEmpty() && needsHumidity) {
            return missing(HUMIDITY, place);
        }
        double wanted = humidity.orElse(0);
        double held = Math.max(0, Math.min(1, wanted));
        boolean isBeyond = held != wanted && Math.abs(held - wanted) <= SENSOR_BEYOND;
        Outcome<AirState> state = new Weather(
                        Pressure.ofPascals(baro.getAsDouble()),
                        Temperature.ofKelvins(temperature.getAsDouble()),
                        Weather.Moisture.ofHumidityPercent(100 * (isBeyond ? held : wanted)))
                .state(place);
        return isBeyond && state.value().isPresent()
                ? state.then(air -> Outcome.of(
                        air,
                        List.of(Finding.note(
                                FindingCode.AIR_HUMIDITY_HELD,
                                place,
                                Detail.of("humidity", wanted),
                                Detail.of("taken", held)))))
                : state;
    }

    /** What would be missing for any pull with these columns. */
    static List<String> lacking(Set<Role> logged, SweepPlan.AirFacts facts, boolean needsHumidity) {
        List<String> lacking = new ArrayList<>();
        if (!logged.contains(Role.BAROMETER) && facts.baro().isEmpty()) {
            lacking.add(BAROMETER);
        }
        if (!logged.contains(Role.INLET_AIR_TEMPERATURE) && facts.air().isEmpty()) {
            lacking.add(INLET_AIR);
        }
        if (!logged.contains(Role.HUMIDITY) && facts.humidity().isEmpty() && needsHumidity) {
            lacking.add(HUMIDITY);
        }
        return lacking;
    }

    private static OptionalDouble median(Samples samples, Role role, Optional<Double> otherwise) {
        double[] values = samples.presentValues(Channel.of(role));
        if (values.length > 0) {
            return OptionalDouble.of(Series.of(values).median());
        }
        return otherwise.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    private static Outcome<AirState> missing(String reading, Place place) {
        return Outcome.failed(Finding.error(FindingCode.AIR_READING_MISSING, place, Detail.of("reading", reading)));
    }
}
