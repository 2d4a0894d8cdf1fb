package org.nextpull.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.nextpull.app.DayInput;
import org.nextpull.app.WrittenFiles;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.report.json.AdviseJson;
import org.nextpull.report.text.AdviseText;
import org.nextpull.report.text.Csv;
import org.nextpull.session.SessionResult;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code advise}: the next setting, or stop, and why. */
@Command(
        name = "advise",
        mixinStandardHelpOptions = true,
        description = {
            "Says what to set for the next pull, or to stop, and why.",
            "It takes all pulls so far, corrects them, fits the sweep, and gives the best setting with its interval."
        })
final class AdviseCommand implements Callable<Integer> {
    private final Console console;

    @Mixin
    private DayOptions day = new DayOptions();

    @Option(names = "--charts", paramLabel = "DIR", description = "Also write the charts as PNG into this folder.")
    private Optional<String> charts = Optional.empty();

    @Option(
            names = "--map",
            paramLabel = "FILE",
            description =
                    "Also write the next map, or the final one after a stop, as rpm,advance_deg; - is standard output, "
                            + "and the answer then goes to standard error.")
    private Optional<String> map = Optional.empty();

    @Mixin
    private OutputOptions output = new OutputOptions();

    AdviseCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        DayInput input = day.read();
        SessionResult result = input.result();
        Optional<MapFile> file = map.map(name -> new MapFile(name, console));
        PrintWriter answer = file.filter(MapFile::isStandardOutput).isPresent() ? console.err() : console.out();
        output.print(
                answer, () -> new AdviseJson().advise(result), () -> new AdviseText(output.shown()).advise(result));
        if (output.isJson()) {
            console.print(input.findings());
        }
        charts.ifPresent(folder -> new ChartFiles(folder, input.files(), console)
                .write(result, output.shown().units()));
        file.ifPresent(to -> to.write(result, input.files()));
        boolean nothing = result.isWithoutAnswer();
        return input.someFailed() || nothing ? ExitCodes.BAD_INPUT : ExitCodes.DONE;
    }

    /**
     * Writes the map of an advice.
     *
     * @param name file to write; a dash for standard output
     * @param console where it goes, or where it is said
     */
    private record MapFile(String name, Console console) {
        private static final String STANDARD_OUTPUT = "-";

        boolean isStandardOutput() {
            return name.equals(STANDARD_OUTPUT);
        }

        /**
         * Writes it, or gives up where the advice is no map.
         *
         * @param read files that the result comes from, which are not written over
         */
        void write(SessionResult result, List<Path> read) {
            String text = result.advice()
                    .flatMap(Csv::map)
                    .orElseThrow(() -> new Program.BadInput(
                            List.of(Finding.error(FindingCode.NO_MAP_TO_WRITE, Place.inFile(name)))));
            if (isStandardOutput()) {
                console.out().print(text);
            } else {
                Path file = TextFile.path(name);
                TextFile.require(WrittenFiles.of(file), read);
                TextFile.write(file, text, console);
            }
        }
    }
}
