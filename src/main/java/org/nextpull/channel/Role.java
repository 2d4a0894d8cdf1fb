package org.nextpull.channel;

import java.util.Locale;
import org.nextpull.unit.Quantity;

/** What a column of a log means to the tool. */
public enum Role {
    TIME(Quantity.TIME),
    ENGINE_SPEED(Quantity.SPEED),
    TORQUE(Quantity.TORQUE),
    POWER(Quantity.POWER),
    /** Spark advance before top dead centre. */
    ADVANCE(Quantity.ANGLE),
    /** Degrees added everywhere to the present spark map. */
    ADVANCE_OFFSET(Quantity.ANGLE),
    LAMBDA(Quantity.LAMBDA),
    /** Air-fuel ratio as a gauge shows it; turned into lambda on reading, when the gauge's scale is known. */
    AIR_FUEL_RATIO(Quantity.AIR_FUEL_RATIO),
    THROTTLE(Quantity.FRACTION),
    /** Knock events counted by the logger: each sample's own count, not a running total. */
    KNOCK_EVENTS(Quantity.COUNT),
    /** Graded knock level of a sensor, any scale. */
    KNOCK_LEVEL(Quantity.COUNT),
    EXHAUST_TEMPERATURE(Quantity.TEMPERATURE),
    COOLANT_TEMPERATURE(Quantity.TEMPERATURE),
    OIL_TEMPERATURE(Quantity.TEMPERATURE),
    INLET_AIR_TEMPERATURE(Quantity.TEMPERATURE),
    BAROMETER(Quantity.PRESSURE),
    HUMIDITY(Quantity.FRACTION),
    ROLLER_SPEED(Quantity.SPEED),
    ROAD_SPEED(Quantity.VELOCITY),
    OIL_PRESSURE(Quantity.PRESSURE),
    FUEL_PRESSURE(Quantity.PRESSURE),
    /** Absolute pressure in the inlet manifold. */
    MANIFOLD_PRESSURE(Quantity.PRESSURE),
    INJECTOR_DUTY(Quantity.FRACTION),
    FUEL_FLOW(Quantity.MASS_FLOW),
    /** Number that a logger gives to the run which a row belongs to. */
    RUN(Quantity.COUNT),
    /** Order of a pull in the day. */
    ORDER(Quantity.COUNT),
    /** Text: label of the configuration. */
    LABEL(Quantity.COUNT),
    /** Text: name of the fuel. */
    FUEL(Quantity.COUNT),
    /** In a table of results: whether the row counts, as 1 or 0. */
    USED(Quantity.COUNT);

    private final Quantity quantity;

    Role(Quantity quantity) {
        this.quantity = quantity;
    }

    public Quantity quantity() {
        return quantity;
    }

    /** Whether the column holds words, not numbers. */
    public boolean isText() {
        return this == LABEL || this == FUEL;
    }

    /** The role as plan files and JSON write it: {@code engine-speed} is {@code engine_speed} there. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }
}
