package org.nextpull.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import org.nextpull.fuel.FlowComparison;
import org.nextpull.fuel.Fuel;
import org.nextpull.fuel.FuelDose;
import org.nextpull.fuel.InjectorDuty;
import org.nextpull.report.json.FuelJson;
import org.nextpull.report.text.FuelFlowText;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Power;
import org.nextpull.unit.Pressure;
import org.nextpull.unit.Quantity;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code fuel injector}: how long injectors must stay open. */
@Command(
        name = "injector",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description =
                "Shows how long injectors of a given rating must stay open on a fuel, and how large they must be.")
final class FuelInjectorCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    private final Console console;

    @Parameters(arity = "0..1", paramLabel = "FUEL", description = "What flows through; without one, the plan's fuel.")
    private Optional<String> name = Optional.empty();

    @Option(names = "--injectors", required = true, paramLabel = "N", description = "How many share the flow.")
    private int count = 1;

    @Option(names = "--flow", paramLabel = "AMOUNT", description = "Fuel flow of the whole engine: 60kg/h or 130lb/h.")
    private Optional<Amount> flow = Optional.empty();

    @Option(names = "--power", paramLabel = "AMOUNT", description = "Or: power at the crank, 150kW or 200hp.")
    private Optional<Amount> power = Optional.empty();

    @Option(
            names = "--bsfc",
            paramLabel = "AMOUNT",
            description =
                    "And: specific consumption, 300g/kWh or 0.5lb/hph; petrol at full load takes 270 to 330 g/kWh, "
                            + "0.45 to 0.55 lb/hph (common practice).")
    private Optional<Amount> consumption = Optional.empty();

    @Option(
            names = "--bsfc-fuel",
            paramLabel = "FUEL",
            description =
                    "Fuel that the specific consumption is known for, if it is another one; turned at equal lambda and air.")
    private Optional<String> measuredOn = Optional.empty();

    @Option(names = "--rated", paramLabel = "AMOUNT", description = "Flow of one held open: 550cc/min or 42lb/h.")
    private Optional<Amount> rated = Optional.empty();

    @Option(
            names = "--rated-at",
            paramLabel = "AMOUNT",
            description = "Pressure difference at which it was rated: 300kPa, 3bar or 43.5psi.")
    private Optional<Amount> ratedAt = Optional.empty();

    @Option(
            names = "--test-density",
            paramLabel = "AMOUNT",
            description =
                    "Density of the liquid that it was rated with (default: 0.684kg/L, n-heptane; see its sheet).")
    private Optional<Amount> testDensity = Optional.empty();

    @Option(
            names = "--across",
            paramLabel = "AMOUNT",
            description = "Pressure difference over them now, fuel less manifold; without it, that of the rating.")
    private Optional<Amount> across = Optional.empty();

    @Mixin
    private KnownFuels known = new KnownFuels();

    @Mixin
    private OutputOptions output = new OutputOptions();

    FuelInjectorCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        CommandLine at = spec.commandLine();
        if (count < 1 || count > 100) {
            throw new ParameterException(at, "--injectors must be from 1 to 100, not " + count + ".");
        }
        InjectorDuty.Injectors injectors = new InjectorDuty.Injectors(count, rating(at));
        Pressure now = across.map(amount -> Pressure.ofPascals(amount.positive(at, "--across", Quantity.PRESSURE)))
                .orElse(injectors.rating().across());
        Fuel fuel = known.namedOrInTank(name);
        InjectorDuty duty = known.taken(InjectorDuty.of(flow(at, fuel), injectors, now, fuel));
        return known.tell(
                console,
                output,
                () -> new FuelJson().injector(fuel, duty, known.findings()),
                () -> new FuelFlowText(output.shown()).injector(fuel, duty));
    }

    private InjectorDuty.Rating rating(CommandLine at) {
        Amount size =
                rated.orElseThrow(() -> new Amount.Wanted("rated flow", "--rated", Quantity.VOLUME_FLOW).missing(at));
        Pressure pressure = Pressure.ofPascals(Amount.positive(
                at, new Amount.Wanted("pressure of the rating", "--rated-at", Quantity.PRESSURE), ratedAt));
        double liquid = testDensity
                .map(amount -> amount.positive(at, "--test-density", Quantity.DENSITY))
                .orElse(InjectorDuty.Rating.USUAL_TEST_DENSITY);
        return size.is(Quantity.MASS_FLOW)
                ? new InjectorDuty.Rating(size.positive(at, "--rated", Quantity.MASS_FLOW), pressure, liquid)
                : InjectorDuty.Rating.ofVolume(size.positive(at, "--rated", Quantity.VOLUME_FLOW), pressure, liquid);
    }

    /** The flow of that fuel in kg/s: given as it is, or by power and specific consumption. */
    private double flow(CommandLine at, Fuel fuel) {
        if (flow.isPresent()) {
            if (power.isPresent() || consumption.isPresent() || measuredOn.isPresent()) {
                throw new ParameterException(at, "Give the fuel flow, or power and specific consumption; not both.");
            }
            return flow.get().positive(at, "--flow", Quantity.MASS_FLOW);
        }
        double watts = power.orElseThrow(() ->
                        new Amount.Wanted("power", "--power, or the fuel flow by --flow", Quantity.POWER).missing(at))
                .positive(at, "--power", Quantity.POWER);
        InjectorDuty.SpecificConsumption measured = new InjectorDuty.SpecificConsumption(Amount.positive(
                at, new Amount.Wanted("specific consumption", "--bsfc", Quantity.SPECIFIC_CONSUMPTION), consumption));
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
