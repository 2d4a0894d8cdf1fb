package org.nextpull.intake;

import java.util.Optional;
import org.nextpull.channel.Role;

/** Which values a channel can have at all, and which it usually has under load. All ranges are common practice, without a source. */
final class ExpectedValues {
    private ExpectedValues() {}

    /** Values outside are a sensor's fault code or a broken line, never a measurement; empty where anything goes. */
    static Optional<ValueRange> possible(Role role) {
        return switch (role) {
            case ENGINE_SPEED, ROLLER_SPEED -> range(0, 30_000);
            case TORQUE -> range(-20_000, 20_000);
            case POWER -> range(-5e6, 5e6);
            case ADVANCE -> range(-60, 90);
            case ADVANCE_OFFSET -> range(-60, 60);
            case LAMBDA -> range(0.2, 20);
            case AIR_FUEL_RATIO -> range(1, 300);
            case THROTTLE, INJECTOR_DUTY -> range(-0.2, 2);
            case HUMIDITY -> range(0, 1.05);
            // an exhaust sensor at its upper stop, or beyond, must not pass for none: it stays, and is far too hot
            case EXHAUST_TEMPERATURE -> Optional.of(ValueRange.ofCelsius(-60, Double.MAX_VALUE));
            case COOLANT_TEMPERATURE, OIL_TEMPERATURE, INLET_AIR_TEMPERATURE ->
                Optional.of(ValueRange.ofCelsius(-60, 250));
            case BAROMETER -> range(40_000, 120_000);
            case MANIFOLD_PRESSURE -> range(0, 1e6);
            case OIL_PRESSURE -> range(-1e5, 2e6);
            case FUEL_PRESSURE -> range(-1e5, 5e7);
            case ROAD_SPEED -> range(0, 200);
            case FUEL_FLOW -> range(0, 1);
            case KNOCK_EVENTS -> range(0, 1e6);
            // beyond it times of neighbouring rows fall together: one broken cell would take all rows behind it along
            case TIME -> range(-1e13, 1e13);
            case KNOCK_LEVEL, RUN, ORDER, LABEL, FUEL, USED -> Optional.empty();
        };
    }

    /** Where the middle value of a log taken under load usually lies; empty where the usual range is too wide to tell units apart. */
    static Optional<ValueRange> usual(Role role) {
        return switch (role) {
            case COOLANT_TEMPERATURE -> Optional.of(ValueRange.ofCelsius(55, 118));
            case OIL_TEMPERATURE -> Optional.of(ValueRange.ofCelsius(50, 150));
            case INLET_AIR_TEMPERATURE -> Optional.of(ValueRange.ofCelsius(1, 65));
            case EXHAUST_TEMPERATURE -> Optional.of(ValueRange.ofCelsius(350, 1100));
            case BAROMETER -> range(78_000, 106_000);
            case OIL_PRESSURE -> range(80_000, 900_000);
            case ENGINE_SPEED -> range(500, 15_000);
            default -> Optional.empty();
        };
    }

    private static Optional<ValueRange> range(double low, double high) {
        return Optional.of(new ValueRange(low, high));
    }

    /**
     * A closed range of values in the project's unit.
     *
     * @param low lower end
     * @param high upper end
     */
    record ValueRange(double low, double high) {
        /** Whatever is finite. */
        static final ValueRange ANY = new ValueRange(-Double.MAX_VALUE, Double.MAX_VALUE);

        private static final double ZERO_CELSIUS_K = 273.15;

        static ValueRange ofCelsius(double low, double high) {
            return new ValueRange(low + ZERO_CELSIUS_K, high + ZERO_CELSIUS_K);
        }

        boolean holds(double value) {
            return value >= low && value <= high;
        }
    }
}
