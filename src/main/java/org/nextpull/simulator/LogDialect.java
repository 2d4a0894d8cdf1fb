package org.nextpull.simulator;

import java.util.Locale;
import org.nextpull.channel.Role;
import org.nextpull.unit.Unit;

/** A way of writing logs, such as the loggers of the trade have. */
public enum LogDialect {
    /** Commas, decimal points, units in brackets: {@code Engine speed [rpm]}. */
    PLAIN(',', '.', UnitPlace.BRACKETS),
    /** Semicolons, decimal commas, a row of units below the headers. */
    SEMICOLON(';', ',', UnitPlace.ROW),
    /** Tabs, decimal points, US units in brackets. */
    TABBED_US('\t', '.', UnitPlace.BRACKETS),
    /** Commas, decimal points, small letters with the unit behind an underscore: {@code engine_speed_rpm}. */
    COMPACT(',', '.', UnitPlace.SUFFIX);

    /** Where the unit of a column stands. */
    enum UnitPlace {
        BRACKETS,
        ROW,
        SUFFIX
    }

    private final char separator;
    private final char decimal;
    private final UnitPlace unitPlace;

    LogDialect(char separator, char decimal, UnitPlace unitPlace) {
        this.separator = separator;
        this.decimal = decimal;
        this.unitPlace = unitPlace;
    }

    char separator() {
        return separator;
    }

    char decimal() {
        return decimal;
    }

    boolean hasUnitRow() {
        return unitPlace == UnitPlace.ROW;
    }

    /** Header of a channel. */
    String header(Role role) {
        Column column = column(role);
        return switch (unitPlace) {
            case ROW -> column.name();
            case BRACKETS ->
                role.isText() || isBare(column.unit())
                        ? column.name()
                        : column.name() + " [" + column.unit().symbol() + "]";
            case SUFFIX -> compact(role, column);
        };
    }

    /** Unit of a channel as the row of units has it. */
    String unitCell(Role role) {
        Column column = column(role);
        return role.isText() || isBare(column.unit()) ? "-" : column.unit().symbol();
    }

    private static boolean isBare(Unit unit) {
        return unit == Unit.FRACTION || unit == Unit.COUNT || unit == Unit.LAMBDA;
    }

    private static String compact(Role role, Column column) {
        String name = column.name().toLowerCase(Locale.ROOT).replace(' ', '_');
        if (role.isText() || isBare(column.unit())) {
            return name;
        }
        String unit =
                column.unit().symbol().replace(".", "").replace("%", "percent").replace("/", "_");
        return name + "_" + unit.toLowerCase(Locale.ROOT);
    }

    Column column(Role role) {
        boolean us = this == TABBED_US;
        return switch (role) {
            case TIME -> new Column("Time", Unit.SECOND, 3);
            case ENGINE_SPEED -> new Column("Engine speed", Unit.RPM, 0);
            case ROLLER_SPEED -> new Column("Roller speed", Unit.RPM, 2);
            case TORQUE -> us ? new Column("Torque", Unit.POUND_FOOT, 1) : new Column("Torque", Unit.NEWTON_METRE, 1);
            case POWER -> us ? new Column("Power", Unit.HORSEPOWER, 1) : new Column("Power", Unit.KILOWATT, 2);
            case THROTTLE -> new Column("Throttle", Unit.PERCENT, 1);
            case LAMBDA -> new Column("Lambda", Unit.LAMBDA, 3);
            case ADVANCE -> new Column("Spark advance", Unit.DEGREE, 1);
            case ADVANCE_OFFSET -> new Column("Spark offset", Unit.DEGREE, 1);
            case KNOCK_EVENTS -> new Column("Knock count", Unit.COUNT, 0);
            case KNOCK_LEVEL -> new Column("Knock level", Unit.COUNT, 2);
            case EXHAUST_TEMPERATURE -> new Column("Exhaust temp", us ? Unit.FAHRENHEIT : Unit.CELSIUS, 0);
            case COOLANT_TEMPERATURE -> new Column("Coolant temp", us ? Unit.FAHRENHEIT : Unit.CELSIUS, 1);
            case OIL_TEMPERATURE -> new Column("Oil temp", us ? Unit.FAHRENHEIT : Unit.CELSIUS, 1);
            case INLET_AIR_TEMPERATURE -> new Column("Inlet air temp", us ? Unit.FAHRENHEIT : Unit.CELSIUS, 1);
            case BAROMETER -> us ? new Column("Baro", Unit.INCH_OF_MERCURY, 2) : new Column("Baro", Unit.KILOPASCAL, 2);
            case HUMIDITY -> new Column("Humidity", Unit.PERCENT, 1);
            case OIL_PRESSURE ->
                us ? new Column("Oil pressure", Unit.PSI, 1) : new Column("Oil pressure", Unit.KILOPASCAL, 0);
            case FUEL_PRESSURE ->
                us ? new Column("Fuel pressure", Unit.PSI, 1) : new Column("Fuel pressure", Unit.KILOPASCAL, 0);
            case MANIFOLD_PRESSURE ->
                us ? new Column("Manifold pressure", Unit.PSI, 2) : new Column("Manifold pressure", Unit.KILOPASCAL, 1);
            case INJECTOR_DUTY -> new Column("Injector duty", Unit.PERCENT, 1);
            case FUEL_FLOW ->
                us
                        ? new Column("Fuel flow", Unit.POUND_PER_HOUR, 1)
                        : new Column("Fuel flow", Unit.KILOGRAM_PER_HOUR, 2);
            case ROAD_SPEED ->
                us
                        ? new Column("Road speed", Unit.MILE_PER_HOUR, 2)
                        : new Column("Road speed", Unit.KILOMETRE_PER_HOUR, 2);
            case ORDER -> new Column("Order", Unit.COUNT, 0);
            case RUN -> new Column("Run", Unit.COUNT, 0);
            case LABEL -> new Column("Label", Unit.COUNT, 0);
            case FUEL -> new Column("Fuel", Unit.COUNT, 0);
            case USED -> new Column("Used", Unit.COUNT, 0);
            case AIR_FUEL_RATIO -> new Column("AFR", Unit.AFR, 2);
        };
    }

    /**
     * How a dialect writes one channel.
     *
     * @param name header without its unit
     * @param unit unit of the numbers
     * @param decimals digits behind the decimal mark
     */
    record Column(String name, Unit unit, int decimals) {}
}
