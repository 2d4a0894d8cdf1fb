package org.nextpull.unit;

/** What a number measures. Inside the project a quantity is always held in its {@link #si} unit. */
public enum Quantity {
    TIME("s"),
    /** Speed of a shaft; kept in revolutions per minute, the unit of the trade, and named {@code rpm} wherever it appears. */
    SPEED("rpm"),
    TORQUE("N.m"),
    POWER("W"),
    PRESSURE("Pa"),
    TEMPERATURE("K"),
    /** Crank angle, in degrees; spark advance is positive before top dead centre. */
    ANGLE("deg"),
    /** Air-fuel equivalence ratio. */
    LAMBDA("1"),
    /** Air-fuel ratio by mass; becomes lambda only with a named scale. */
    AIR_FUEL_RATIO("kg/kg"),
    /** A fraction, 0.5 for 50 %. */
    FRACTION("1"),
    /** A count or an index without unit: knock events, knock level, order. */
    COUNT("1"),
    LENGTH("m"),
    /** Road or roller surface speed. */
    VELOCITY("m/s"),
    MASS("kg"),
    MASS_FLOW("kg/s"),
    VOLUME("m3"),
    DENSITY("kg/m3"),
    SPECIFIC_ENERGY("J/kg"),
    /** Fuel for each unit of work at the crank. */
    SPECIFIC_CONSUMPTION("kg/J"),
    VOLUME_FLOW("m3/s"),
    INERTIA("kg.m2"),
    VOLTAGE("V");

    private final String si;

    Quantity(String si) {
        this.si = si;
    }

    /** The symbol of the unit that the project keeps this quantity in. */
    public String si() {
        return si;
    }
}
