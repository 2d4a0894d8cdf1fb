package org.nextpull.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.nextpull.app.PlanFile;
import org.nextpull.finding.Finding;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.fuel.Blends;
import org.nextpull.fuel.Fuel;
import org.nextpull.fuel.NamedScale;
import org.nextpull.plan.FuelChoice;
import org.nextpull.plan.SweepPlan;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The fuels that may be named: the listed ones and, with a plan, its own. Keeps what was found on the way. */
final class KnownFuels {
    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

    @Option(names = "--plan", paramLabel = "PLAN", description = "Sweep plan (TOML); its own blends may be named too.")
    private Optional<String> plan = Optional.empty();

    private final List<Finding> findings = new ArrayList<>();
    private Optional<FuelChoice> read = Optional.empty();

    /** The fuels that may be named, or bad input when the plan cannot be used. */
    Blends blends() {
        return taken(choice().blends());
    }

    /** The fuel of that name. */
    Fuel named(String name) {
        return taken(blends().find(name, Place.nowhere()));
    }

    /** The fuel of that name; without a name the one in the plan's tank. */
    Fuel namedOrInTank(Optional<String> name) {
        return name.map(this::named)
                .orElseGet(() -> taken(choice().inTank()
                        .orElseThrow(() -> new ParameterException(
                                at(), "Name a fuel, or give --plan with a plan that names one under [fuel]."))));
    }

    /** The scale of that name or number. */
    NamedScale scale(String text) {
        return taken(NamedScale.find(text, blends(), Place.nowhere()));
    }

    /** The value with its findings kept, or bad input. */
    <T> T taken(Outcome<T> outcome) {
        T value = Program.usable(outcome);
        outcome.findings().stream()
                .filter(finding -> !findings.contains(finding))
                .forEach(findings::add);
        return value;
    }

    /** What is worth saying of the plan, its blends and the values taken. */
    List<Finding> findings() {
        return List.copyOf(findings);
    }

    private FuelChoice choice() {
        FuelChoice choice =
                read.orElseGet(() -> plan.map(name -> taken(PlanFile.read(name).map(PlanFile::plan)))
                        .orElseGet(SweepPlan::defaults)
                        .fuel());
        read = Optional.of(choice);
        return choice;
    }

    /** The command that names them. */
    CommandLine at() {
        return spec.commandLine();
    }

    /** Prints an answer, and what was found on the way to it. */
    int tell(Console console, OutputOptions output, Supplier<String> document, Supplier<String> text) {
        output.print(console.out(), document, text);
        console.print(findings(), output.shown());
        return ExitCodes.DONE;
    }
}
