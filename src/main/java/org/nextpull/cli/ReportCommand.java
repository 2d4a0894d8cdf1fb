package org.nextpull.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.report.html.Sheet;
import org.nextpull.session.Replay;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code report}: the sheet that another shop can check. */
@Command(
        name = "report",
        mixinStandardHelpOptions = true,
        description =
                "Writes the sheet of a day as one HTML file that needs no network and prints on A4 and Letter: the chosen settings "
                        + "with intervals, how they were found, charts with their numbers, findings, and what it takes to repeat it.")
final class ReportCommand implements Callable<Integer> {
    private final Console console;

    @Mixin
    private DayOptions day = new DayOptions();

    @Option(
            names = "--out",
            paramLabel = "FILE|-",
            defaultValue = "sheet.html",
            description = "Where to write; - is standard output (default: ${DEFAULT-VALUE}).")
    private String out = "sheet.html";

    @Mixin
    private UnitsOption units = new UnitsOption();

    ReportCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        DayInput input = day.read();
        Replay replay = Replay.of(input.session());
        String sheet = Sheet.of(replay, units.shown());
        if (out.equals("-")) {
            console.out().println(sheet);
        } else {
            write(sheet);
        }
        Messages.print(console.err(), input.findings());
        return input.someFailed() || replay.steps().isEmpty() ? ExitCodes.BAD_INPUT : ExitCodes.DONE;
    }

    private void write(String sheet) {
        try {
            Files.writeString(Path.of(out), sheet, StandardCharsets.UTF_8);
            console.err().println("wrote " + out);
        } catch (IOException | InvalidPathException unwritable) {
            throw new Program.BadInput(List.of(Finding.error(
                    FindingCode.FOLDER_NOT_WRITABLE,
                    Place.inFile(out),
                    Detail.of("why", String.valueOf(unwritable.getMessage())))));
        }
    }
}
