package org.nextpull.unit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A unit as loggers write it, with its exact conversion to the project's unit of the quantity: {@code si = value * factor + offset}.
 *
 * <p>Factors follow from the international definitions of the pound (0.45359237 kg), the inch (25.4 mm) and standard gravity
 * (9.80665 m/s2); the horsepower is 550 ft.lbf/s, the metric one 75 kgf.m/s. A column of mercury has 13,595.1 kg/m3 (0 degC), the torr
 * is 1/760 atm, the gallon is that of 231 cubic inches, and the Btu that of the international table (2326 J/kg for 1 Btu/lb, exact).
 */
public enum Unit {
    SECOND(Quantity.TIME, "s", 1, "sec|secs|second|seconds|sek|sekunden|seg|segundos|secondes|secondi"),
    MILLISECOND(Quantity.TIME, "ms", 1e-3, "msec|millis|milliseconds"),
    MICROSECOND(Quantity.TIME, "us", 1e-6, "µs|μs|usec|microseconds"),
    MINUTE(Quantity.TIME, "min", 60, "minute|minutes"),
    RPM(
            Quantity.SPEED,
            "rpm",
            1,
            "1/min|min-1|r/min|rev/min|u/min|tr/min|giri/min|g/min|min^-1|min⁻¹|r.p.m.|upm|tr/mn|t/min"),
    KRPM(Quantity.SPEED, "krpm", 1000, "rpm*1000|rpmx1000|x1000rpm|1000rpm|1000/min"),
    RADIAN_PER_SECOND(Quantity.SPEED, "rad/s", 30 / Math.PI, "rads"),
    HERTZ(Quantity.SPEED, "Hz", 60, "1/s|rev/s|rps"),
    NEWTON_METRE(Quantity.TORQUE, "N.m", 1, "nm|n*m|n-m|n·m|n m"),
    POUND_FOOT(
            Quantity.TORQUE,
            "lbf.ft",
            1.3558179483314003,
            "lbft|lb-ft|lb.ft|lb*ft|lb ft|ftlb|ft-lb|ft-lbs|ft.lb|ft lb|ftlbs|"
                    + "ft.lbf|ftlbf|lbfft|ft-lbf|lbf-ft|lbs-ft|lbsft|lb·ft|lbf·ft|lb_ft|ft_lb|lb/ft|lbs/ft|ft/lb|ft/lbs|lbs.ft|ft.lbs|lbs ft|ft lbs|pound-feet|foot-pounds"),
    KILOGRAM_METRE(
            Quantity.TORQUE, "kgf.m", 9.80665, "kgm|kg.m|kg-m|kgf-m|kgfm|m.kg|mkg|kg*m|kg·m|m·kg|mkp|kpm|kp.m|m.kp"),
    DECANEWTON_METRE(Quantity.TORQUE, "daN.m", 10, "danm|m.dan|mdan|dan·m|m·dan"),
    KILOWATT(Quantity.POWER, "kW", 1000, "kilowatt"),
    WATT(Quantity.POWER, "W", 1, "watt"),
    HORSEPOWER(Quantity.POWER, "hp", 745.6998715822702, "bhp|whp|hp(mech)|chp|rwhp"),
    METRIC_HORSEPOWER(Quantity.POWER, "PS", 735.49875, "cv|ch|hp(metric)|pk|hk"),
    PASCAL(Quantity.PRESSURE, "Pa", 1, ""),
    HECTOPASCAL(Quantity.PRESSURE, "hPa", 100, "mbar|millibar|mb"),
    KILOPASCAL(Quantity.PRESSURE, "kPa", 1000, "kpaa|kpa(abs)|kpa abs"),
    BAR(Quantity.PRESSURE, "bar", 1e5, "bara|bar(a)"),
    PSI(Quantity.PRESSURE, "psi", 6894.757293168361, "psia|lbf/in2|lb/in2"),
    INCH_OF_MERCURY(Quantity.PRESSURE, "inHg", 3386.388640341, "in.hg|\"hg|in-hg|in hg"),
    MILLIMETRE_OF_MERCURY(Quantity.PRESSURE, "mmHg", 133.322387415, "mm hg"),
    TORR(Quantity.PRESSURE, "Torr", 101325.0 / 760, ""),
    ATMOSPHERE(Quantity.PRESSURE, "atm", 101325, ""),
    CELSIUS(
            Quantity.TEMPERATURE,
            "degC",
            1,
            273.15,
            "c|°c|deg c|deg.c|degrees c|degrees celsius|grad celsius|gradi c|grados c|c°|celsius|°celsius|grad c|ºc|deg_c"),
    FAHRENHEIT(
            Quantity.TEMPERATURE,
            "degF",
            1 / 1.8,
            459.67 / 1.8,
            "f|°f|deg f|deg.f|degrees f|f°|fahrenheit|°fahrenheit|ºf|deg_f"),
    KELVIN(Quantity.TEMPERATURE, "K", 1, "kelvin|°k"),
    DEGREE(
            Quantity.ANGLE,
            "deg",
            1,
            "°|degrees|degree|deg ca|°ca|degca|deg btdc|°btdc|btdc|° btdc|°kw|°kw v. ot|°kw v.ot|°kwvot|°v|°v pmh|°av pmh|°pmh|°apms|°ppms|°ca btdc|°v.ot|°vot|°vil|gradvot|gradkwvot|grad kw|grad|gradi|grados|degrés"),
    LAMBDA(Quantity.LAMBDA, "lambda", 1, "λ|lam|la"),
    AFR(Quantity.AIR_FUEL_RATIO, "AFR", 1, "kg/kg|a/f|lb/lb|:1"),
    FRACTION(Quantity.FRACTION, "1", 1, "-|ratio|frac"),
    PERCENT(Quantity.FRACTION, "%", 0.01, "percent|pct|prozent|%rh|% rh|%hr|% hr|%ur|% ur|%rf|% rf"),
    COUNT(Quantity.COUNT, "count", 1, "events|n|#|counts"),
    VOLT(Quantity.VOLTAGE, "V", 1, "volt|volts"),
    MILLIVOLT(Quantity.VOLTAGE, "mV", 1e-3, ""),
    METRE(Quantity.LENGTH, "m", 1, "metre|meter"),
    MILLIMETRE(Quantity.LENGTH, "mm", 1e-3, ""),
    INCH(Quantity.LENGTH, "in", 0.0254, "inch"),
    FOOT(Quantity.LENGTH, "ft", 0.3048, "feet|foot"),
    METRE_PER_SECOND(Quantity.VELOCITY, "m/s", 1, "mps"),
    KILOMETRE_PER_HOUR(Quantity.VELOCITY, "km/h", 1 / 3.6, "kph|kmh|kmph"),
    MILE_PER_HOUR(Quantity.VELOCITY, "mph", 0.44704, "mi/h"),
    KILOGRAM(Quantity.MASS, "kg", 1, ""),
    POUND(Quantity.MASS, "lb", 0.45359237, "lbs"),
    KILOGRAM_PER_SECOND(Quantity.MASS_FLOW, "kg/s", 1, ""),
    KILOGRAM_PER_HOUR(Quantity.MASS_FLOW, "kg/h", 1 / 3600.0, "kg/hr"),
    GRAM_PER_SECOND(Quantity.MASS_FLOW, "g/s", 1e-3, ""),
    POUND_PER_HOUR(Quantity.MASS_FLOW, "lb/h", 0.45359237 / 3600, "lb/hr|lbs/hr|lbs/h|pph"),
    CUBIC_METRE(Quantity.VOLUME, "m3", 1, ""),
    LITRE(Quantity.VOLUME, "L", 1e-3, "litre|liter|ltr"),
    CUBIC_CENTIMETRE(Quantity.VOLUME, "cm3", 1e-6, "cc"),
    CUBIC_INCH(Quantity.VOLUME, "in3", 16.387064e-6, "cuin|cu in|cu.in|cid|in^3"),
    US_GALLON(Quantity.VOLUME, "gal", 3.785411784e-3, "usgal|us gal"),
    KILOGRAM_PER_CUBIC_METRE(Quantity.DENSITY, "kg/m3", 1, "g/l"),
    KILOGRAM_PER_LITRE(Quantity.DENSITY, "kg/L", 1000, "g/cm3|g/ml"),
    POUND_PER_GALLON(Quantity.DENSITY, "lb/gal", 119.826427316897, ""),
    POUND_PER_CUBIC_FOOT(Quantity.DENSITY, "lb/ft3", 0.45359237 / (0.3048 * 0.3048 * 0.3048), ""),
    JOULE_PER_KILOGRAM(Quantity.SPECIFIC_ENERGY, "J/kg", 1, ""),
    MEGAJOULE_PER_KILOGRAM(Quantity.SPECIFIC_ENERGY, "MJ/kg", 1e6, ""),
    BTU_PER_POUND(Quantity.SPECIFIC_ENERGY, "Btu/lb", 2326, ""),
    KILOGRAM_PER_JOULE(Quantity.SPECIFIC_CONSUMPTION, "kg/J", 1, ""),
    GRAM_PER_KILOWATT_HOUR(Quantity.SPECIFIC_CONSUMPTION, "g/(kW.h)", 1 / 3.6e9, "g/kwh|g/kw.h|g/kw-h|g/kw h|g/(kwh)"),
    POUND_PER_HORSEPOWER_HOUR(
            Quantity.SPECIFIC_CONSUMPTION,
            "lb/(hp.h)",
            0.45359237 / (745.6998715822702 * 3600),
            "lb/hp.h|lb/hph|lb/hp-h|" + "lb/hp-hr|lb/hp/hr|lb/bhp-hr|lbs/hp-hr"),
    CUBIC_METRE_PER_SECOND(Quantity.VOLUME_FLOW, "m3/s", 1, ""),
    CUBIC_CENTIMETRE_PER_MINUTE(Quantity.VOLUME_FLOW, "cm3/min", 1e-6 / 60, "cc/min|ml/min|ccm"),
    LITRE_PER_HOUR(Quantity.VOLUME_FLOW, "L/h", 1e-3 / 3600, "l/hr|lph"),
    KILOGRAM_SQUARE_METRE(Quantity.INERTIA, "kg.m2", 1, "kgm2|kg*m2|kg m2|kg.m^2"),
    POUND_SQUARE_FOOT(Quantity.INERTIA, "lb.ft2", 0.45359237 * 0.3048 * 0.3048, "lbft2|lb-ft2");

    private final Quantity quantity;
    private final String symbol;
    private final double factor;
    private final double offset;
    private static final Map<String, List<Unit>> BY_SPELLING = bySpelling();

    /** Parted by bars; an enum may not hold a list. */
    private final String spellings;

    Unit(Quantity quantity, String symbol, double factor, String spellings) {
        this(quantity, symbol, factor, 0, spellings);
    }

    Unit(Quantity quantity, String symbol, double factor, double offset, String spellings) {
        this.quantity = quantity;
        this.symbol = symbol;
        this.factor = factor;
        this.offset = offset;
        this.spellings = spellings;
    }

    /** What it measures; values of two units are comparable only where this is the same. */
    public Quantity quantity() {
        return quantity;
    }

    /** The symbol in plain ASCII, as files, JSON and plans have it: {@code degC}, {@code N.m}. */
    public String symbol() {
        return symbol;
    }

    /** The sign as people read it: {@code °C}, {@code N·m}, {@code kg/m³}. */
    public String sign() {
        return this == POUND_FOOT
                ? "lb-ft"
                : symbol.replaceFirst("^deg(?=[CF])", "°")
                        .replace('.', '·')
                        .replaceFirst("(?<=[a-z])2", "²")
                        .replaceFirst("(?<=[a-z])3", "³");
    }

    /** Turns a value in this unit into the project's unit of its quantity, {@link Quantity#si}. */
    public double toSi(double value) {
        return value * factor + offset;
    }

    /** Turns a value in the project's unit into this unit. */
    public double fromSi(double si) {
        return (si - offset) / factor;
    }

    /** Turns a difference in the project's unit into this unit. */
    public double differenceFromSi(double si) {
        return si / factor;
    }

    /**
     * Finds the unit that a logger means by a symbol, whatever the case and the brackets around it. Where two units share letters
     * ({@code MPa} and {@code mPa}) only the usual one of the trade is known.
     *
     * @param text a symbol such as {@code lb-ft}, {@code [kPa]} or {@code °C}
     * @return the unit, or empty when the symbol is not known
     */
    public static Optional<Unit> parse(String text) {
        return spelt(text).stream().findFirst();
    }

    /** Like {@link #parse}, but only among units of one quantity: {@code C} is a temperature, never a count. */
    public static Optional<Unit> parse(String text, Quantity quantity) {
        return spelt(text).stream().filter(unit -> unit.quantity == quantity).findFirst();
    }

    private static List<Unit> spelt(String text) {
        return BY_SPELLING.getOrDefault(bare(text), List.of());
    }

    private static Map<String, List<Unit>> bySpelling() {
        Map<String, List<Unit>> units = new HashMap<>();
        for (Unit unit : values()) {
            Stream<String> listed = Stream.of(unit.spellings.split("\\|")).filter(spelling -> !spelling.isEmpty());
            Stream.concat(listed, Stream.of(unit.symbol.toLowerCase(Locale.ROOT)))
                    .distinct()
                    .forEach(spelling -> units.computeIfAbsent(spelling, none -> new ArrayList<>())
                            .add(unit));
        }
        return Map.copyOf(units);
    }

    private static String bare(String text) {
        String trimmed = text.strip();
        if (trimmed.length() >= 2 && "([{<".indexOf(trimmed.charAt(0)) >= 0) {
            trimmed = trimmed.substring(1, trimmed.length() - 1);
        }
        return trimmed.strip().toLowerCase(Locale.ROOT);
    }
}
