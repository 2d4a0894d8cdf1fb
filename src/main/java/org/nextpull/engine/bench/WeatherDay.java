package org.nextpull.engine.bench;

import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.air.AirState;
import org.nextpull.air.HylandWexler;
import org.nextpull.engine.OperatingPoint;
import org.nextpull.unit.Pressure;
import org.nextpull.unit.Temperature;

/**
 * The day around the pulls.
 *
 * @param morning air at the first pull
 * @param change what a pull's worth of time changes in it
 * @param warmth how warm the engine is
 * @param scatter what no pull repeats
 */
public record WeatherDay(AirState morning, Change change, Warmth warmth, Scatter scatter) {
    /**
     * Slow change of the air from pull to pull.
     *
     * @param barometerPa in Pa
     * @param airK in K
     */
    public record Change(double barometerPa, double airK) {}

    /**
     * Temperatures of the engine at the start of a pull.
     *
     * @param oilAtFirst oil at the first pull
     * @param oilWarm oil that the pulls approach
     * @param coolant coolant held by its thermostat
     */
    public record Warmth(Temperature oilAtFirst, Temperature oilWarm, Temperature coolant) {
        private static final double PULLS_TO_WARM = 3;

        Temperature oilAt(int pull) {
            double left = Math.exp(-(pull - 1) / PULLS_TO_WARM);
            return Temperature.ofKelvins(oilWarm.kelvins() + (oilAtFirst.kelvins() - oilWarm.kelvins()) * left);
        }
    }

    /**
     * What no pull repeats.
     *
     * @param torque standard deviation of a pull's torque, as a fraction
     * @param lambda standard deviation of a pull's mixture around what was asked
     * @param drift change of torque with each pull that neither weather nor warmth explains, as a fraction
     */
    public record Scatter(double torque, double lambda, Drift drift) {
        /**
         * Slow change.
         *
         * @param perPull fraction of torque a pull
         */
        public record Drift(double perPull) {}
    }

    /** A mild day, a warm engine after the first pulls, 0.2 % of pull-to-pull scatter. */
    public static WeatherDay usual() {
        return new WeatherDay(
                new AirState(Pressure.ofKilopascals(98.4), Temperature.ofCelsius(19), Pressure.ofKilopascals(1.2)),
                new Change(-18, 0.25),
                new Warmth(Temperature.ofCelsius(91), Temperature.ofCelsius(96), Temperature.ofCelsius(86)),
                new Scatter(0.002, 0.003, new Scatter.Drift(-0.0002)));
    }

    /**
     * The same day with other air in the morning.
     *
     * @param barometer pressure
     * @param temperature of the air
     * @param relativeHumidity fraction, 0 to 1
     */
    public WeatherDay withMorning(Pressure barometer, Temperature temperature, double relativeHumidity) {
        double saturated = HylandWexler.saturationPressure(temperature).pascals();
        Pressure vapour = Pressure.ofPascals(relativeHumidity * saturated);
        return new WeatherDay(new AirState(barometer, temperature, vapour), change, warmth, scatter);
    }

    /** The same day with its morning's air replaced by what is given of it; humidity is relative, 0 to 1. */
    public WeatherDay under(Optional<Pressure> barometer, Optional<Temperature> temperature, OptionalDouble humidity) {
        Pressure pressure = barometer.orElseGet(morning::barometer);
        Temperature warmth = temperature.orElseGet(morning::temperature);
        return humidity.isPresent()
                ? withMorning(pressure, warmth, humidity.getAsDouble())
                : new WeatherDay(new AirState(pressure, warmth, morning.vapour()), change, this.warmth, scatter);
    }

    /** What surrounds the engine once it is warm, in the air of the morning. */
    public OperatingPoint.Surroundings settled() {
        return new OperatingPoint.Surroundings(morning, warmth.coolant(), warmth.oilWarm());
    }

    /** Air at a pull, from 1. */
    AirState airAt(int pull) {
        return new AirState(
                Pressure.ofPascals(morning.barometer().pascals() + (pull - 1) * change.barometerPa()),
                Temperature.ofKelvins(morning.temperature().kelvins() + (pull - 1) * change.airK()),
                morning.vapour());
    }
}
