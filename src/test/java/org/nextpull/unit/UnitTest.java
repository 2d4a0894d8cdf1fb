package org.nextpull.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.nextpull.ReferenceRow;

/** Units against refdata/units.csv: international definitions, seen in GNU units 2.22. */
class UnitTest {
    /** The table prints 15 digits. */
    private static final double RELATIVE = 1e-12;

    /** Spellings of the table that loggers do not write. */
    private static final Map<String, Unit> NAMED = Map.of(
            "hp (mechanical, 550 ft.lbf/s)", Unit.HORSEPOWER,
            "PS (metric, 75 kgf.m/s)", Unit.METRIC_HORSEPOWER,
            "mmHg (conventional)", Unit.MILLIMETRE_OF_MERCURY,
            "inHg (conventional, 0 C)", Unit.INCH_OF_MERCURY,
            "mbar / hPa", Unit.HECTOPASCAL,
            "lb/(hp.h) BSFC", Unit.POUND_PER_HORSEPOWER_HOUR,
            "g/(kW.h)", Unit.GRAM_PER_KILOWATT_HOUR,
            "Btu_IT/lb", Unit.BTU_PER_POUND,
            "US gal", Unit.US_GALLON);

    /** Forces, energies, constants and other makes of mercury inch: no logger column of ours. */
    private static final List<String> NOT_COLUMNS =
            List.of("lbf", "Btu_IT", "std gravity", "degF -> degR", "inHg (32 F) SP 811", "inHg (60 F) SP 811");

    private static final List<String> ARITHMETIC = List.of(
            "hp per (lbf.ft * rpm): divide by",
            "kW per (N.m * rpm): divide by",
            "PS per (N.m * rpm): divide by",
            "29.92 inHg",
            "29.235 inHg",
            "99 kPa",
            "degF -> degC",
            "degC -> K");

    static Stream<ReferenceRow> conversions() {
        return ReferenceRow.read("units.csv").stream()
                .filter(row -> !NOT_COLUMNS.contains(row.text("from")) && !ARITHMETIC.contains(row.text("from")));
    }

    @ParameterizedTest
    @MethodSource("conversions")
    void aFactorIsThatOfTheDefinitions(ReferenceRow row) {
        Unit from = unit(row.text("from"));
        Unit to = unit(row.text("to"));
        assertThat(from.quantity()).isEqualTo(to.quantity());
        assertThat(to.fromSi(from.toSi(1))).isCloseTo(row.number("factor"), relative(row.number("factor")));
    }

    @Test
    void powerIsTorqueTimesSpeedInEveryPairOfUnits() {
        Map<String, Double> divisors = new HashMap<>();
        ReferenceRow.read("units.csv").forEach(row -> divisors.put(row.text("from"), row.number("factor")));
        assertDivisor(Unit.HORSEPOWER, Unit.POUND_FOOT, divisors.getOrDefault(ARITHMETIC.get(0), 0.0));
        assertDivisor(Unit.KILOWATT, Unit.NEWTON_METRE, divisors.getOrDefault(ARITHMETIC.get(1), 0.0));
        assertDivisor(Unit.METRIC_HORSEPOWER, Unit.NEWTON_METRE, divisors.getOrDefault(ARITHMETIC.get(2), 0.0));
    }

    private static void assertDivisor(Unit power, Unit torque, double divisor) {
        double rpm = 4321;
        double shown =
                power.fromSi(Torque.ofNewtonMetres(torque.toSi(150)).at(rpm).watts());
        assertThat(150 * rpm / shown).isCloseTo(divisor, relative(divisor));
        Power back = Power.ofWatts(power.toSi(shown));
        assertThat(torque.fromSi(back.torqueAt(rpm).newtonMetres())).isCloseTo(150, relative(150));
    }

    @ParameterizedTest
    @CsvSource({"29.92 inHg, 29.92", "29.235 inHg, 29.235"})
    void mercuryInchesGiveThePrintedKilopascals(String name, double inches) {
        ReferenceRow row = ReferenceRow.read("units.csv").stream()
                .filter(candidate -> candidate.text("from").equals(name))
                .findFirst()
                .orElseThrow();
        double kilopascals = Unit.KILOPASCAL.fromSi(Unit.INCH_OF_MERCURY.toSi(inches));
        assertThat(kilopascals).isCloseTo(row.number("factor"), relative(100));
    }

    /** The pairs are named in the table's definition of degF. */
    @ParameterizedTest
    @CsvSource({"77, 25", "60, 15.555555555555556", "68, 20", "85, 29.444444444444443", "-40, -40", "32, 0"})
    void fahrenheitBecomesCelsius(double fahrenheit, double celsius) {
        assertThat(Unit.CELSIUS.fromSi(Unit.FAHRENHEIT.toSi(fahrenheit))).isCloseTo(celsius, within(1e-10));
        assertThat(Temperature.ofCelsius(celsius).kelvins()).isCloseTo(Unit.FAHRENHEIT.toSi(fahrenheit), within(1e-10));
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void aValueSurvivesTheRoundTrip(Unit unit) {
        for (double value : new double[] {-12.5, 0, 1, 97.3}) {
            assertThat(unit.fromSi(unit.toSi(value))).isCloseTo(value, within(1e-9));
            assertThat(unit.differenceFromSi(unit.toSi(value) - unit.toSi(0))).isCloseTo(value, within(1e-9));
        }
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void everySymbolIsUnderstoodWithinItsQuantity(Unit unit) {
        assertThat(Unit.parse(unit.symbol(), unit.quantity())).contains(unit);
        assertThat(Unit.parse(" [" + unit.symbol() + "] ", unit.quantity())).contains(unit);
    }

    @ParameterizedTest
    @CsvSource({
        "CELSIUS, °C",
        "FAHRENHEIT, °F",
        "NEWTON_METRE, N·m",
        "POUND_FOOT, lb-ft",
        "KILOGRAM_SQUARE_METRE, kg·m²",
        "CUBIC_CENTIMETRE_PER_MINUTE, cm³/min",
        "DEGREE, deg",
        "PERCENT, %"
    })
    void peopleReadTheSignsOfPrint(Unit unit, String sign) {
        assertThat(unit.sign()).isEqualTo(sign);
    }

    static Stream<Quantity> quantitiesWithDimension() {
        return Stream.of(Quantity.values()).filter(quantity -> !quantity.si().equals("1"));
    }

    @ParameterizedTest
    @MethodSource("quantitiesWithDimension")
    void everyQuantityHasItsOwnUnitAmongTheUnits(Quantity quantity) {
        assertThat(Unit.parse(quantity.si(), quantity))
                .hasValueSatisfying(unit -> assertThat(unit.toSi(3.25)).isEqualTo(3.25));
    }

    @ParameterizedTest
    @CsvSource({
        "lb-ft, POUND_FOOT", "FT-LBS, POUND_FOOT", "Nm, NEWTON_METRE", "N·m, NEWTON_METRE", "°C, CELSIUS",
                "degF, FAHRENHEIT",
        "(kPa), KILOPASCAL", "mbar, HECTOPASCAL", "inHg, INCH_OF_MERCURY", "1/min, RPM", "bhp, HORSEPOWER",
                "PS, METRIC_HORSEPOWER",
        "cv, METRIC_HORSEPOWER", "kgm, KILOGRAM_METRE", "psi, PSI", "%, PERCENT", "λ, LAMBDA",
                "g/kWh, GRAM_PER_KILOWATT_HOUR",
        "lb/hr, POUND_PER_HOUR", "cc/min, CUBIC_CENTIMETRE_PER_MINUTE"
    })
    void spellingsOfLoggersAreUnderstood(String spelling, Unit unit) {
        assertThat(Unit.parse(spelling)).contains(unit);
    }

    @Test
    void anUnknownSymbolIsNoUnit() {
        assertThat(Unit.parse("furlong")).isEmpty();
        assertThat(Unit.parse("")).isEmpty();
        assertThat(Unit.parse("[]")).isEmpty();
        assertThat(Unit.parse("nm|n*m")).isEmpty();
        assertThat(Unit.parse("kPa", Quantity.TORQUE)).isEmpty();
    }

    @Test
    void aSpanHoldsItsBoundsAndRefusesThemSwapped() {
        assertThat(Span.of(1, 2).contains(1)).isTrue();
        assertThat(Span.of(1, 2).contains(2)).isTrue();
        assertThat(Span.of(1, 2).contains(2.0001)).isFalse();
        assertThat(Span.of(1, 2.5).width()).isEqualTo(1.5);
        assertThatThrownBy(() -> Span.of(2, 1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void scalarsRefuseWhatIsNoNumber() {
        assertThatThrownBy(() -> Pressure.ofPascals(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Torque.ofNewtonMetres(Double.POSITIVE_INFINITY))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Lambda.of(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Temperature.ofKelvins(-1)).isInstanceOf(IllegalArgumentException.class);
    }

    private static Unit unit(String name) {
        Unit named = NAMED.get(name);
        return named == null ? Unit.parse(name).orElseThrow(() -> new AssertionError("no unit " + name)) : named;
    }

    private static Offset<Double> relative(double expected) {
        return within(RELATIVE * Math.abs(expected));
    }
}
