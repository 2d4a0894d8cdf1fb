package org.nextpull.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.nextpull.app.WrittenFiles;
import org.nextpull.notebook.KeptSession;
import org.nextpull.report.json.NotebookJson;
import org.nextpull.report.text.Csv;
import org.nextpull.session.SessionResult;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code notebook export}: a session for other programs. */
@Command(
        name = "export",
        mixinStandardHelpOptions = true,
        description = {
            "Writes a session for other programs.",
            "Its pulls as a table of results, which the program reads back, its curves, its samples as a log, or "
                    + "everything as one JSON document."
        })
final class NotebookExportCommand implements Callable<Integer> {
    private final Console console;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "ID", description = "Number of the session, as list shows it.")
    private long id;

    @Option(
            names = "--what",
            paramLabel = "PART",
            defaultValue = "pulls",
            description = "pulls, curves or samples as CSV, or all as JSON (default: ${DEFAULT-VALUE}).")
    private Part what = Part.PULLS;

    @Option(names = "--pull", paramLabel = "N", description = "With curves or samples: this pull only.")
    private Optional<Integer> pull = Optional.empty();

    @Option(
            names = "--out",
            paramLabel = "FILE|-",
            defaultValue = "-",
            description = "Where to write; - is standard output (default: ${DEFAULT-VALUE}).")
    private String out = "-";

    @Mixin
    private NotebookOption notebook = new NotebookOption();

    /** What is written. */
    enum Part {
        PULLS,
        CURVES,
        SAMPLES,
        ALL;

        @Override
        public String toString() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    NotebookExportCommand(Console console, CommandSpec spec) {
        this.console = console;
        this.spec = spec;
    }

    @Override
    public Integer call() {
        KeptSession session = notebook.reading(book -> book.session(id));
        SessionResult result = session.result();
        int highest = result.pulls().size();
        if (pull.isPresent() && (pull.get() < 1 || pull.get() > highest)) {
            throw new ParameterException(
                    spec.commandLine(), "--pull is from 1 to " + highest + " in session " + id + ": " + pull.get());
        }
        String text = switch (what) {
            case PULLS -> Csv.pulls(result);
            case CURVES -> Csv.curves(result, pull);
            case SAMPLES -> Csv.samples(session.sources(), pull);
            case ALL -> new NotebookJson().session(session, result) + "\n";
        };
        if (out.equals("-")) {
            console.out().print(text);
        } else {
            Path file = TextFile.path(out);
            TextFile.require(WrittenFiles.of(file), List.of(notebook.file()));
            TextFile.write(file, text, console);
        }
        return ExitCodes.DONE;
    }
}
