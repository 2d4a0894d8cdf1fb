package org.nextpull.plan;

import java.util.Locale;
import org.nextpull.unit.Quantity;

/** The limits of the engine that a plan can set; named here since alarms, pulls and advice all speak of them. */
public enum Limit {
    KNOCK(Quantity.COUNT),
    LEAN(Quantity.LAMBDA),
    EXHAUST(Quantity.TEMPERATURE),
    COOLANT(Quantity.TEMPERATURE),
    OIL(Quantity.TEMPERATURE),
    INLET_AIR(Quantity.TEMPERATURE),
    OIL_PRESSURE(Quantity.PRESSURE),
    FUEL_PRESSURE(Quantity.PRESSURE),
    BOOST(Quantity.PRESSURE),
    SPEED(Quantity.SPEED),
    INJECTOR_DUTY(Quantity.FRACTION);

    private final Quantity quantity;

    Limit(Quantity quantity) {
        this.quantity = quantity;
    }

    public Quantity quantity() {
        return quantity;
    }

    /** Whether the limit is a least value; all others are greatest values. */
    public boolean isLeast() {
        return this == OIL_PRESSURE || this == FUEL_PRESSURE;
    }

    /**
     * The limit of that {@link #id}.
     *
     * @throws IllegalArgumentException when there is none
     */
    public static Limit of(String id) {
        return valueOf(id.toUpperCase(Locale.ROOT).replace('-', '_'));
    }

    /** As JSON writes it: {@code oil-pressure}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
