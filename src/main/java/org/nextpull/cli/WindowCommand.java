package org.nextpull.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.nextpull.app.DayInput;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.window.WindowProgram;
import org.nextpull.window.day.DaySource;
import org.nextpull.window.day.ReplayedDay;
import org.nextpull.window.look.Look;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code window}: the bench window. */
@Command(
        name = "window",
        mixinStandardHelpOptions = true,
        description = {
            "Opens the bench window, to be read from two metres away.",
            "Write a plan by a form, see what arrives, run a session, page through the notebook, compare. With logs or "
                    + "--session it opens on that day and goes through it pull by pull. F1 lists its keys."
        })
final class WindowCommand implements Callable<Integer> {
    private final Console console;

    @Mixin
    private DayOptions day = new DayOptions();

    @Mixin
    private OutputOptions.Units units = new OutputOptions.Units();

    @Option(names = "--dark", description = "Dark colours; D changes it in the window.")
    private boolean dark;

    @Option(names = "--large", description = "Larger type; G changes it in the window.")
    private boolean large;

    WindowCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws InterruptedException {
        if (!WindowProgram.hasDisplay()) {
            throw new Program.BadInput(List.of(Finding.error(FindingCode.NO_DISPLAY, Place.nowhere())));
        }
        Optional<DaySource> source = day.isNamed() ? Optional.of(source(day.read())) : Optional.empty();
        WindowProgram.open(new WindowProgram.Setup(
                source,
                day.plan(),
                day.notebook(),
                Program.version(),
                new Look(dark, large, units.shown().units())));
        return ExitCodes.DONE;
    }

    private DaySource source(DayInput input) {
        console.print(input.findings());
        return ReplayedDay.of(name(input), input);
    }

    private static String name(DayInput input) {
        List<String> names = new ArrayList<>();
        input.sources().forEach(source -> names.add(lastPart(source.name())));
        input.session()
                .tables()
                .forEach(table -> names.add(lastPart(table.description().name())));
        return names.size() == 1 ? names.get(0) : names.get(0) + " and " + (names.size() - 1) + " more";
    }

    private static String lastPart(String path) {
        return path.substring(Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\')) + 1);
    }
}
