package org.nextpull.unit;

/** The units that people read. JSON is not touched by it: its keys name their units. */
public enum UnitSystem {
    METRIC(Unit.NEWTON_METRE, Unit.KILOWATT),
    US(Unit.POUND_FOOT, Unit.HORSEPOWER);

    private final Unit torque;
    private final Unit power;

    UnitSystem(Unit torque, Unit power) {
        this.torque = torque;
        this.power = power;
    }

    /** The unit of torque. */
    public Unit torque() {
        return torque;
    }

    /** The unit of power. */
    public Unit power() {
        return power;
    }
}
