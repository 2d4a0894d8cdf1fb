package org.nextpull.air;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * What a change of weather does to the torque that the brake shows, by the rule of one standard: the engine's corrected torque stays,
 * so the raw one goes with the inverse of the factor.
 *
 * @param standard the rule
 * @param before air of the first pull
 * @param after air of the later pull
 * @param ratios raw torque after over before, dimensionless, from each cause alone, taken one after the other; their product is the whole
 *     change
 */
public record WeatherChange(CorrectionStandard standard, AirState before, AirState after, Map<Cause, Double> ratios) {
    /** What changed. */
    public enum Cause {
        PRESSURE,
        TEMPERATURE,
        MOISTURE
    }

    public WeatherChange {
        EnumMap<Cause, Double> copy = new EnumMap<>(Cause.class);
        copy.putAll(ratios);
        ratios = Collections.unmodifiableMap(copy);
    }

    /**
     * What changes between two airs: first the pressure, then the temperature, then the moisture.
     *
     * @throws IllegalArgumentException when the vapour pressure of the first air is not below the barometer of the second
     */
    public static WeatherChange between(AirState before, AirState after, CorrectionStandard standard) {
        AirState pressed = new AirState(after.barometer(), before.temperature(), before.vapour());
        AirState warmed = new AirState(after.barometer(), after.temperature(), before.vapour());
        EnumMap<Cause, Double> ratios = new EnumMap<>(Cause.class);
        ratios.put(Cause.PRESSURE, standard.factor(before) / standard.factor(pressed));
        ratios.put(Cause.TEMPERATURE, standard.factor(pressed) / standard.factor(warmed));
        ratios.put(Cause.MOISTURE, standard.factor(warmed) / standard.factor(after));
        return new WeatherChange(standard, before, after, ratios);
    }

    /** Raw torque after over raw torque before, dimensionless and positive. */
    double rawTorqueRatio() {
        return ratios.values().stream().reduce(1.0, (a, b) -> a * b);
    }

    /** The same in percent: -2 when the brake shows 2 % less. */
    public double rawTorquePercent() {
        return 100 * (rawTorqueRatio() - 1);
    }
}
