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
        LogColumn column = column(role);
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
        LogColumn column = column(role);
        return role.isText() || isBare(column.unit()) ? "-" : column.unit().symbol();
    }

    private static boolean isBare(Unit unit) {
        return unit == Unit.FRACTION || unit == Unit.COUNT || unit == Unit.LAMBDA;
    }

    private static String compact(Role role, LogColumn column) {
        String name = column.name().toLowerCase(Locale.ROOT).replace(' ', '_');
        if (role.isText() || isBare(column.unit())) {
            return name;
        }
        String unit =
                column.unit().symbol().replace(".", "").replace("%", "percent").replace("/", "_");
        return name + "_" + unit.toLowerCase(Locale.ROOT);
    }

    LogColumn column(Role role) {
        boolean us = this == TABBED_US;
        return switch (role) {
            case TIME -> new LogColumn("Time", Unit.SECOND, 3);
            case ENGINE_SPEED -> new LogColumn("Engine speed", Unit.RPM, 0);
            case ROLLER_SPEED -> new LogColumn("Roller speed", Unit.RPM, 2);
            case TORQUE ->
                us ? new LogColumn("Torque", Unit.POUND_FOOT, 1) : new LogColumn("Torque", Unit.NEWTON_METRE, 1);
            case POWER -> us ? new LogColumn("Power", Unit.HORSEPOWER, 1) : new LogColumn("Power", Unit.KILOWATT, 2);
            case THROTTLE -> new LogColumn("Throttle", Unit.PERCENT, 1);
            case LAMBDA -> new LogColumn("Lambda", Unit.LAMBDA, 3);
            case ADVANCE -> new LogColumn("Spark advance", Unit.DEGREE, 1);
            case ADVANCE_OFFSET -> new LogColumn("Spark offset", Unit.DEGREE, 1);
            case KNOCK_EVENTS -> new LogColumn("Knock count", Unit.COUNT, 0);
            case KNOCK_LEVEL -> new LogColumn("Knock level", Unit.COUNT, 2);
            case EXHAUST_TEMPERATURE -> new LogColumn("Exhaust temp", us ? Unit.FAHRENHEIT : Unit.CELSIUS, 0);
            case COOLANT_TEMPERATURE -> new LogColumn("Coolant temp", us ? Unit.FAHRENHEIT : Unit.CELSIUS, 1);
            case OIL_TEMPERATURE -> new LogColumn("Oil temp", us ? Unit.FAHRENHEIT : Unit.CELSIUS, 1);
            case INLET_AIR_TEMPERATURE -> new LogColumn("Inlet air temp", us ? Unit.FAHRENHEIT : Unit.CELSIUS, 1);
            case BAROMETER ->
                us ? new LogColumn("Baro", Unit.INCH_OF_MERCURY, 2) : new LogColumn("Baro", Unit.KILOPASCAL, 2);
            case HUMIDITY -> new LogColumn("Humidity", Unit.PERCENT, 1);
            case OIL_PRESSURE ->
                us ? new LogColumn("Oil pressure", Unit.PSI, 1) : new LogColumn("Oil pressure", Unit.KILOPASCAL, 0);
            case FUEL_PRESSURE ->
                us ? new LogColumn("Fuel pressure", Unit.PSI, 1) : new LogColumn("Fuel pressure", Unit.KILOPASCAL, 0);
            case MANIFOLD_PRESSURE ->
                us
                        ? new LogColumn("Manifold pressure", Unit.PSI, 2)
                        : new LogColumn("Manifold pressure", Unit.KILOPASCAL, 1);
            case INJECTOR_DUTY -> new LogColumn("Injector duty", Unit.PERCENT, 1);
            case FUEL_FLOW ->
                us
                        ? new LogColumn("Fuel flow", Unit.POUND_PER_HOUR, 1)
                        : new LogColumn("Fuel flow", Unit.KILOGRAM_PER_HOUR, 2);
            case ROAD_SPEED ->
                us
                        ? new LogColumn("Road speed", Unit.MILE_PER_HOUR, 2)
                        : new LogColumn("Road speed", Unit.KILOMETRE_PER_HOUR, 2);
            case ORDER -> new LogColumn("Order", Unit.COUNT, 0);
            case RUN -> new LogColumn("Run", Unit.COUNT, 0);
            case LABEL -> new LogColumn("Label", Unit.COUNT, 0);
            case FUEL -> new LogColumn("Fuel", Unit.COUNT, 0);
            case USED -> new LogColumn("Used", Unit.COUNT, 0);
            case AIR_FUEL_RATIO -> new LogColumn("AFR", Unit.AFR, 2);
        };
    }
}
