package org.nextpull.cli;

import java.util.Optional;
import org.nextpull.fuel.FlowComparison;
import org.nextpull.fuel.Fuel;
import org.nextpull.fuel.FuelDose;
import org.nextpull.fuel.SpecificConsumption;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Power;
import org.nextpull.unit.Unit;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** Fuel flow of an engine: given as it is, or by power and specific consumption. */
final class FuelDemand {
    private static final String CONSUMPTIONS = "--bsfc-g-kwh or --bsfc-lb-hph";
    private final OneReading flow = new OneReading("fuel flow");
    private final OneReading power = new OneReading("power");
    private final OneReading consumption = new OneReading("specific consumption");

    @Option(
            names = "--bsfc-fuel",
            paramLabel = "FUEL",
            description =
                    "Fuel that the specific consumption is known for, if it is another one; turned at equal lambda and air.")
    private Optional<String> measuredOn = Optional.empty();

    @Option(names = "--flow-kg-h", paramLabel = "N", description = "Fuel flow of the whole engine in kg/h.")
    void flowKgH(double value) {
        flow.take("--flow-kg-h", Unit.KILOGRAM_PER_HOUR, value);
    }

    @Option(names = "--flow-lb-h", paramLabel = "N", description = "Fuel flow of the whole engine in lb/h.")
    void flowLbH(double value) {
        flow.take("--flow-lb-h", Unit.POUND_PER_HOUR, value);
    }

    @Option(names = "--power-kw", paramLabel = "N", description = "Or: power at the crank in kW.")
    void powerKw(double value) {
        power.take("--power-kw", Unit.KILOWATT, value);
    }

    @Option(names = "--power-hp", paramLabel = "N", description = "Power at the crank in hp.")
    void powerHp(double value) {
        power.take("--power-hp", Unit.HORSEPOWER, value);
    }

    @Option(
            names = "--bsfc-g-kwh",
            paramLabel = "N",
            description =
                    "And: specific consumption in g/(kW.h); petrol at full load takes 270 to 330 (common practice).")
    void bsfcGKwh(double value) {
        consumption.take("--bsfc-g-kwh", Unit.GRAM_PER_KILOWATT_HOUR, value);
    }

    @Option(
            names = "--bsfc-lb-hph",
            paramLabel = "N",
            description =
                    "Specific consumption in lb/(hp.h); petrol at full load takes 0.45 to 0.55 (common practice).")
    void bsfcLbHph(double value) {
        consumption.take("--bsfc-lb-hph", Unit.POUND_PER_HORSEPOWER_HOUR, value);
    }

    /** The flow of that fuel in kg/s. */
    double flow(CommandLine at, Fuel fuel, KnownFuels known) {
        if (flow.isGiven()) {
            if (power.isGiven() || consumption.isGiven() || measuredOn.isPresent()) {
                throw new ParameterException(at, "Give the fuel flow, or power and specific consumption; not both.");
            }
            return flow.positive(at, "--flow-kg-h or --flow-lb-h");
        }
        double watts = power.positive(at, "--power-kw or --power-hp, or the fuel flow by --flow-kg-h or --flow-lb-h");
        SpecificConsumption measured = new SpecificConsumption(consumption.positive(at, CONSUMPTIONS));
        return measuredOn
                .map(known::named)
                .map(other -> measured.on(FlowComparison.between(atLambdaOne(fuel), atLambdaOne(other))))
                .orElse(measured)
                .flow(Power.ofWatts(watts));
    }

    private static FuelDose atLambdaOne(Fuel fuel) {
        return new FuelDose(fuel, Lambda.of(1));
    }
}
