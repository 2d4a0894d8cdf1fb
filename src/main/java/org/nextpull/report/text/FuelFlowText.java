package org.nextpull.report.text;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.nextpull.fuel.FlowComparison;
import org.nextpull.fuel.Fuel;
import org.nextpull.fuel.FuelDose;
import org.nextpull.fuel.FuelFacts;
import org.nextpull.fuel.FuelSwap;
import org.nextpull.fuel.InjectorDuty;
import org.nextpull.fuel.WaterAdded;
import org.nextpull.report.Shown;
import org.nextpull.unit.Quantity;
import org.nextpull.unit.UnitSystem;

/** What {@code fuel compare}, {@code fuel water} and {@code fuel injector} print. */
public final class FuelFlowText {
    private final Shown shown;

    public FuelFlowText(Shown shown) {
        this.shown = shown;
    }

    /** One fuel in place of another. */
    public String compare(FuelSwap swap, Optional<FuelSwap> atBestPower) {
        Fuel fuel = swap.flow().dose().fuel();
        Fuel against = swap.flow().against().fuel();
        TextTable table = new TextTable("", "as asked", "each at best power");
        row(
                table,
                "lambda of " + fuel.name(),
                swap,
                atBestPower,
                one -> lambda(one.flow().dose()));
        row(
                table,
                "lambda of " + against.name(),
                swap,
                atBestPower,
                one -> lambda(one.flow().against()));
        row(
                table,
                "mass, times",
                swap,
                atBestPower,
                one -> Shown.fixed(one.flow().massRatio(), 3));
        row(
                table,
                "volume, times",
                swap,
                atBestPower,
                one -> FuelText.fixed(one.flow().volumeRatio(), 3));
        row(
                table,
                "jet area, times",
                swap,
                atBestPower,
                one -> FuelText.fixed(one.flow().areaRatio(), 3));
        row(
                table,
                "jet diameter, times",
                swap,
                atBestPower,
                one -> FuelText.fixed(one.flow().diameterRatio(), 3));
        String degrees = " " + FuelText.degrees(shown);
        row(
                table,
                "cooling with " + fuel.name() + degrees,
                swap,
                atBestPower,
                one -> FuelText.cooling(shown, one.coolingKelvins()));
        row(
                table,
                "cooling with " + against.name() + degrees,
                swap,
                atBestPower,
                one -> FuelText.cooling(shown, one.coolingAgainstKelvins()));
        row(table, "heat of the air, times", swap, atBestPower, one -> FuelText.fixed(one.energyRatio(), 3));
        return fuel.name() + " in place of " + against.name() + ", with the same air: " + needs(swap.flow()) + "\n\n"
                + table.text() + "\n"
                + "Jets: at equal pressure, viscosity aside. Cooling: if all of it evaporates, an upper bound."
                + " Heat: of the same air burnt exactly.\n"
                + "Best power: the lambda at which it is common, no source; find your engine's own.\n\n"
                + FuelText.worst(fuel);
    }

    private static void row(
            TextTable table,
            String label,
            FuelSwap swap,
            Optional<FuelSwap> atBestPower,
            Function<FuelSwap, String> cell) {
        table.row(label, cell.apply(swap), atBestPower.map(cell).orElse("-"));
    }

    private static String lambda(FuelDose dose) {
        return Shown.fixed(dose.lambda().value(), 3);
    }

    private static String needs(FlowComparison flow) {
        return moreOrLess(OptionalDouble.of(flow.massRatio())) + " by mass, "
                + (flow.volumeRatio().isPresent()
                        ? moreOrLess(flow.volumeRatio()) + " by volume"
                        : "by volume not known, since the density of one is not");
    }

    /** One line on the flow of a fuel against another at equal lambda and at the lambda of best power of each. */
    static String inPlaceOf(FuelFacts facts) {
        FlowComparison equal = facts.atEqualLambda();
        if (equal.dose().fuel().name().equals(equal.against().fuel().name())) {
            return "";
        }
        String best = facts.atBestPower()
                .map(flow -> ";\n  each at its lambda of best power " + moreOrLess(OptionalDouble.of(flow.massRatio()))
                        + flow.volumeRatio().stream()
                                .mapToObj(ratio -> " and " + moreOrLess(OptionalDouble.of(ratio)))
                                .findFirst()
                                .orElse(""))
                .orElse("");
        String volume = equal.volumeRatio().isPresent()
                ? " by mass and " + moreOrLess(equal.volumeRatio()) + " by volume"
                : " by mass";
        return "  In place of " + equal.against().fuel().name() + ", with the same air and lambda: "
                + moreOrLess(OptionalDouble.of(equal.massRatio())) + volume + best + "\n";
    }

    private static String moreOrLess(OptionalDouble ratio) {
        double percent = 100 * (ratio.orElseThrow() - 1);
        return Shown.fixed(Math.abs(percent), 0) + " % " + (percent < 0 ? "less" : "more");
    }

    /** A fuel with water in it. */
    public String water(WaterAdded added) {
        Fuel before = added.before();
        Fuel after = added.after();
        TextTable table = new TextTable("", "without", "with water");
        table.row("alcohol by volume", percent(added.alcoholBefore()), percent(added.alcoholAfter()));
        table.row("air-fuel ratio", ratio(before), ratio(after));
        table.row("density " + shown.unit(Quantity.DENSITY).sign(), density(before), density(after));
        FlowComparison flow = added.flow();
        String volume = flow.volumeRatio().isPresent()
                ? " and " + tenth(flow.volumeRatio().getAsDouble()) + " by volume"
                : "";
        return before.name() + " with water in it takes " + tenth(flow.massRatio()) + " by mass" + volume
                + " for the same air and lambda\n\n" + table.text() + "\n"
                + "Volumes are added up; a hydrometer reads up to 3 % more, for alcohol and water shrink when mixed.\n\n"
                + FuelText.worst(before);
    }

    private static String tenth(double ratio) {
        double percent = 100 * (ratio - 1);
        return Shown.fixed(Math.abs(percent), 1) + " % " + (percent < 0 ? "less" : "more");
    }

    private static String percent(double fraction) {
        return Shown.fixed(100 * fraction, 1) + " %";
    }

    private static String ratio(Fuel fuel) {
        return Shown.fixed(fuel.stoichiometricAirFuelRatio(), 2);
    }

    private String density(Fuel fuel) {
        return shown.number(Quantity.DENSITY, fuel.density().orElseThrow());
    }

    /** How long injectors must stay open. */
    public String injector(Fuel fuel, InjectorDuty duty) {
        String size = duty.sizeRatio() > 1 ? "would have to be " : "could be ";
        return "Injectors on " + fuel.name() + ": open " + Shown.fixed(100 * duty.fraction(), 0) + " % of the time\n"
                + "  each must give " + flow(duty.needed()) + " and gives " + flow(duty.heldOpen()) + " held open\n"
                + "  for " + Shown.fixed(100 * InjectorDuty.HIGHEST_USUAL, 0)
                + " %, the most that is usual (common practice, no source), they "
                + size + Shown.fixed(duty.sizeRatio(), 2) + " times as large\n\n" + FuelText.worst(fuel);
    }

    private String flow(double kilogramsPerSecond) {
        int places = shown.units() == UnitSystem.US ? 1 : 2;
        return Shown.fixed(shown.unit(Quantity.MASS_FLOW).fromSi(kilogramsPerSecond), places) + " "
                + shown.unit(Quantity.MASS_FLOW).sign();
    }
}
