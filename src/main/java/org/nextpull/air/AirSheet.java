package org.nextpull.air;

import java.util.List;
import java.util.Optional;
import org.nextpull.finding.Place;
import org.nextpull.unit.Temperature;

/**
 * Everything that one air state says, side by side.
 *
 * @param air the air
 * @param dewPoint empty for air too dry to have one
 * @param wetBulb thermodynamic wet bulb
 * @param densityAltitude geopotential altitude in m at which the standard atmosphere is as dense as this air, moisture included
 * @param corrections one for each standard, with its findings
 */
public record AirSheet(
        AirState air,
        Optional<Temperature> dewPoint,
        Temperature wetBulb,
        double densityAltitude,
        List<Correction> corrections) {
    public AirSheet {
        corrections = List.copyOf(corrections);
    }

    /**
     * All figures of one air.
     *
     * @param place what the findings of the corrections are about
     * @throws IllegalArgumentException where the temperature lies outside {@link HylandWexler#VALID_KELVINS}, or a factor is not positive
     */
    public static AirSheet of(AirState air, Place place) {
        return new AirSheet(
                air,
                HylandWexler.dewPoint(air.vapour()),
                WetBulb.of(air),
                StandardAtmosphere.densityAltitude(air),
                CorrectionStandard.all().stream()
                        .map(standard -> standard.correction(air, place))
                        .toList());
    }

    /**
     * What going from this air to another does to raw torque, by each standard that corrects at all.
     *
     * @throws IllegalArgumentException when the vapour pressure of this air is not below the barometer of the later one
     */
    public List<WeatherChange> changeTo(AirState later) {
        return CorrectionStandard.all().stream()
                .filter(standard -> standard.limits().isPresent())
                .map(standard -> WeatherChange.between(air, later, standard))
                .toList();
    }
}
