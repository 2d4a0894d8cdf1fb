package org.nextpull.plan;

import java.util.Locale;
import org.nextpull.channel.Role;
import org.nextpull.finding.WrittenId;
import org.nextpull.unit.Quantity;

/** The limits of the engine that a plan can set; named here since alarms, pulls and advice all speak of them. */
public enum Limit implements WrittenId {
    KNOCK(Role.KNOCK_EVENTS),
    LEAN(Role.LAMBDA),
    EXHAUST(Role.EXHAUST_TEMPERATURE),
    COOLANT(Role.COOLANT_TEMPERATURE),
    OIL(Role.OIL_TEMPERATURE),
    INLET_AIR(Role.INLET_AIR_TEMPERATURE),
    OIL_PRESSURE(Role.OIL_PRESSURE),
    FUEL_PRESSURE(Role.FUEL_PRESSURE),
    BOOST(Role.MANIFOLD_PRESSURE),
    SPEED(Role.ENGINE_SPEED),
    INJECTOR_DUTY(Role.INJECTOR_DUTY);

    private final Role role;

    Limit(Role role) {
        this.role = role;
    }

    /** The channel that it is watched on. */
    public Role role() {
        return role;
    }

    public Quantity quantity() {
        return role.quantity();
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
}
