package org.nextpull.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.nextpull.fuel.Fuel;
import org.nextpull.fuel.NamedScale;
import org.nextpull.report.json.FuelJson;
import org.nextpull.report.text.FuelText;
import org.nextpull.unit.Lambda;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code fuel convert}: lambda and air-fuel ratio, on any scale and in both directions. */
@Command(
        name = "convert",
        mixinStandardHelpOptions = true,
        description =
                "Lambda from a gauge's air-fuel ratio, or the other way round, on any scale; what a gauge set for one "
                        + "fuel shows while another burns.")
final class FuelConvertCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    private final Console console;

    @Parameters(arity = "0..1", paramLabel = "FUEL", description = "The fuel that burns; without one, the plan's.")
    private Optional<String> name = Optional.empty();

    @Option(names = "--lambda", paramLabel = "L", description = "A lambda to show on the scales.")
    private Optional<Double> lambda = Optional.empty();

    @Option(names = "--afr", paramLabel = "A", description = "What a gauge shows.")
    private Optional<Double> afr = Optional.empty();

    @Option(
            names = "--scale",
            paramLabel = "S",
            defaultValue = "petrol",
            description =
                    "What the gauge is set to: the ratio that it shows at lambda 1, or a fuel's name for the ratio in print "
                            + "(default: ${DEFAULT-VALUE}, 14.7).")
    private String scale = "petrol";

    @Option(names = "--to", paramLabel = "S", description = "Show it on this scale too; may be given several times.")
    private List<String> others = new ArrayList<>();

    @Mixin
    private KnownFuels known = new KnownFuels();

    @Mixin
    private OutputOptions output = new OutputOptions();

    FuelConvertCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Fuel fuel = known.namedOrInTank(name);
        List<NamedScale> scales = new ArrayList<>();
        scales.add(known.scale(scale));
        others.forEach(other -> scales.add(known.scale(other)));
        scales.add(NamedScale.inPrint(fuel));
        Lambda mixture = mixture(scales.get(0));
        List<NamedScale> distinct = scales.stream().distinct().toList();
        if (output.isJson()) {
            console.out().println(new FuelJson().convert(fuel, mixture, distinct, known.findings()));
        } else {
            console.out().print(FuelText.convert(fuel, mixture, distinct));
        }
        Messages.print(console.err(), known.findings(), output.shown());
        return ExitCodes.DONE;
    }

    private Lambda mixture(NamedScale gauge) {
        if (lambda.isPresent() == afr.isPresent()) {
            throw new ParameterException(spec.commandLine(), "Give either --lambda or --afr, one of the two.");
        }
        return lambda.map(value -> MixtureNumber.lambda(spec.commandLine(), "--lambda", value))
                .orElseGet(() -> MixtureNumber.lambda(spec.commandLine(), afr.orElseThrow(), gauge.scale()));
    }
}
