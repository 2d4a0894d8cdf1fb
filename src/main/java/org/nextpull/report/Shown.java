package org.nextpull.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.nextpull.unit.Quantity;
import org.nextpull.unit.Unit;
import org.nextpull.unit.UnitSystem;

/** Turns values in the project's units into what people read, with a sensible number of places. */
public final class Shown {
    private final UnitSystem units;

    public Shown(UnitSystem units) {
        this.units = units;
    }

    public UnitSystem units() {
        return units;
    }

    /** The unit that people read a quantity in. */
    public Unit unit(Quantity quantity) {
        boolean us = units == UnitSystem.US;
        return switch (quantity) {
            case TIME -> Unit.SECOND;
            case SPEED -> Unit.RPM;
            case TORQUE -> units.torque();
            case POWER -> units.power();
            case PRESSURE -> us ? Unit.PSI : Unit.KILOPASCAL;
            case TEMPERATURE -> us ? Unit.FAHRENHEIT : Unit.CELSIUS;
            case ANGLE -> Unit.DEGREE;
            case LAMBDA -> Unit.LAMBDA;
            case AIR_FUEL_RATIO -> Unit.AFR;
            case FRACTION -> Unit.PERCENT;
            case COUNT -> Unit.COUNT;
            case LENGTH -> us ? Unit.INCH : Unit.MILLIMETRE;
            case VELOCITY -> us ? Unit.MILE_PER_HOUR : Unit.KILOMETRE_PER_HOUR;
            case MASS -> us ? Unit.POUND : Unit.KILOGRAM;
            case MASS_FLOW -> us ? Unit.POUND_PER_HOUR : Unit.GRAM_PER_SECOND;
            case VOLUME -> us ? Unit.US_GALLON : Unit.LITRE;
            case DENSITY -> us ? Unit.POUND_PER_GALLON : Unit.KILOGRAM_PER_LITRE;
            case SPECIFIC_ENERGY -> us ? Unit.BTU_PER_POUND : Unit.MEGAJOULE_PER_KILOGRAM;
            case INERTIA -> us ? Unit.POUND_SQUARE_FOOT : Unit.KILOGRAM_SQUARE_METRE;
            case VOLTAGE -> Unit.VOLT;
            case SPECIFIC_CONSUMPTION -> us ? Unit.POUND_PER_HORSEPOWER_HOUR : Unit.GRAM_PER_KILOWATT_HOUR;
            case VOLUME_FLOW -> Unit.CUBIC_CENTIMETRE_PER_MINUTE;
        };
    }

    /** Decimal places that are worth reading. */
    private static int places(Quantity quantity) {
        return switch (quantity) {
            case SPEED, COUNT, TEMPERATURE, LENGTH, VELOCITY -> 0;
            case LAMBDA, DENSITY, INERTIA -> 3;
            case AIR_FUEL_RATIO, VOLUME, VOLTAGE, SPECIFIC_ENERGY, MASS -> 2;
            default -> 1;
        };
    }

    /** The number alone, in the unit that people read. */
    public String number(Quantity quantity, double si) {
        return fixed(unit(quantity).fromSi(si), places(quantity));
    }

    /** Number and unit: {@code 193.1 N·m}, {@code lambda 0.871}, {@code 26.0 deg}. */
    public String value(Quantity quantity, double si) {
        Unit unit = unit(quantity);
        return switch (quantity) {
            case LAMBDA -> number(quantity, si);
            case COUNT -> plain(si);
            default -> number(quantity, si) + " " + unit.sign();
        };
    }

    /** A difference of temperatures, in the unit that people read: {@code 16.0 °C}. */
    public String difference(double kelvins) {
        Unit unit = unit(Quantity.TEMPERATURE);
        return fixed(unit.fromSi(300 + kelvins) - unit.fromSi(300), 1) + " " + unit.sign();
    }

    /** Displacement of an engine, whose unit differs from that of a tank: {@code 1.998 L}, {@code 121.9 in3}. */
    public String displacement(double cubicMetres) {
        boolean us = units == UnitSystem.US;
        Unit unit = us ? Unit.CUBIC_INCH : Unit.LITRE;
        return fixed(unit.fromSi(cubicMetres), us ? 1 : 3) + " " + unit.sign();
    }

    public String torque(double newtonMetres) {
        return number(Quantity.TORQUE, newtonMetres);
    }

    public String power(double watts) {
        return number(Quantity.POWER, watts);
    }

    /** A number with a fixed count of places; never {@code -0.0}. */
    public static String fixed(double value, int places) {
        return Double.isFinite(value) ? rounded(value, places).toPlainString() : String.valueOf(value);
    }

    /** A number as short as it can be said with four digits: {@code 3}, {@code 0.25}, {@code 1234.5}. */
    public static String plain(double value) {
        if (!Double.isFinite(value) || (value == Math.rint(value) && Math.abs(value) < 1e15)) {
            return fixed(value, 0);
        }
        int digits = Math.max(1, 4 - (int) Math.ceil(Math.log10(Math.abs(value) + 1e-12)));
        return rounded(value, Math.min(6, digits)).stripTrailingZeros().toPlainString();
    }

    /** As {@link String#format} rounds, which would load the signs of a locale first. */
    private static BigDecimal rounded(double value, int places) {
        return BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP);
    }

    /** So many of something: {@code 1 pull}, {@code 3 pulls}. */
    public static String count(long number, String noun) {
        return number + " " + noun + (number == 1 ? "" : "s");
    }

    /** The same for what is not counted in whole numbers: {@code 2.5 degrees}. */
    public static String count(double number, String noun) {
        return plain(number) + " " + noun + (number == 1 ? "" : "s");
    }
}
