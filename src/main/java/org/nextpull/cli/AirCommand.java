package org.nextpull.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.nextpull.air.AirSheet;
import org.nextpull.air.AirState;
import org.nextpull.air.CorrectionStandard;
import org.nextpull.air.PressureCheck;
import org.nextpull.air.Weather;
import org.nextpull.app.PlanFile;
import org.nextpull.finding.Finding;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.plan.SweepPlan;
import org.nextpull.report.json.AirJson;
import org.nextpull.report.text.AirText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code air}: what a weather means for torque, by every standard. */
@Command(
        name = "air",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Shows the correction factors of given weather under each standard.",
            "Also density altitude, and what a change of weather does to uncorrected torque."
        })
final class AirCommand implements Callable<Integer> {
    private static final Place LATER = Place.nowhere().withKey("--later");

    @Spec
    private CommandSpec spec = CommandSpec.create();

    private final Console console;

    @Mixin
    private WeatherReadings weather = new WeatherReadings();

    @Option(
            names = "--later",
            paramLabel = "READING=AMOUNT",
            split = ",",
            description =
                    "Weather of a later pull by the same names, such as baro=98.1kPa,air=31C; what is left out stays.")
    private List<WeatherReadings.Named> later = new ArrayList<>();

    @Option(names = "--plan", paramLabel = "PLAN", description = "Sweep plan; its [air] fills in what no option gives.")
    private Optional<String> plan = Optional.empty();

    @Mixin
    private OutputOptions output = new OutputOptions();

    AirCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        List<Finding> findings = new ArrayList<>();
        SweepPlan.AirFacts facts = plan.map(name -> taken(PlanFile.read(name).map(PlanFile::plan), findings))
                .orElseGet(SweepPlan::defaults)
                .air();
        Optional<CorrectionStandard> chosen = plan.map(name -> facts.standard());
        Weather now = weather.weather(spec.commandLine(), facts);
        AirState air = taken(now.state(Place.nowhere()), findings);
        findings.addAll(PressureCheck.of(weather.pressures(spec.commandLine(), now), Place.nowhere()));
        AirSheet sheet = AirSheet.of(air, Place.nowhere());
        Optional<AirSheet> laterSheet = Optional.of(later)
                .filter(readings -> !readings.isEmpty())
                .map(readings ->
                        WeatherReadings.later(spec.commandLine(), readings).after(spec.commandLine(), air))
                .map(changed -> AirSheet.of(taken(changed.state(LATER), findings), LATER));
        if (output.isJson()) {
            console.out().println(new AirJson().sheet(sheet, laterSheet, chosen, findings));
        } else {
            AirText text = new AirText(output.shown());
            console.out().print(text.sheet(sheet, chosen));
            laterSheet.ifPresent(other -> console.out().print(text.change(sheet, other)));
        }
        console.print(findings, output.shown());
        return ExitCodes.DONE;
    }

    private static <T> T taken(Outcome<T> outcome, List<Finding> findings) {
        findings.addAll(outcome.findings());
        return outcome.value().orElseThrow(() -> new Program.BadInput(findings));
    }
}
