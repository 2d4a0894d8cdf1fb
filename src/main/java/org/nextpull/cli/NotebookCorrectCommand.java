package org.nextpull.cli;

import java.time.InstantSource;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.KnockMark;
import org.nextpull.notebook.KeptSession;
import org.nextpull.report.ActText;
import org.nextpull.session.OperatorAction;
import org.nextpull.unit.Advance;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code notebook correct}: what a pull of a session was really run with. */
@Command(
        name = "correct",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Corrects afterwards what a pull was run with; figures and advice are worked out again.",
            "What no option names stays as it is."
        })
final class NotebookCorrectCommand implements Callable<Integer> {
    private static final double MOST_DEG = 90;

    private final Console console;

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "ID", description = "Number of the session, as list shows it.")
    private long id;

    @Parameters(index = "1", paramLabel = "PULL", description = "Number of the pull in it, as show prints it.")
    private int pull;

    @Option(names = "--advance", paramLabel = "DEG", description = "Advance, in degrees before top dead centre.")
    private Optional<Double> advance = Optional.empty();

    @Option(names = "--offset", paramLabel = "DEG", description = "Or: degrees added to the map.")
    private Optional<Double> offset = Optional.empty();

    @Option(names = "--lambda", paramLabel = "L", description = "Lambda.")
    private Optional<Double> lambda = Optional.empty();

    @Option(names = "--fuel", paramLabel = "FUEL", description = "Fuel.")
    private Optional<String> fuel = Optional.empty();

    @Option(names = "--label", paramLabel = "LABEL", description = "Configuration.")
    private Optional<String> label = Optional.empty();

    @Option(names = "--knock", paramLabel = "yes|no", description = "Whether knock was heard.")
    private Optional<String> knock = Optional.empty();

    @Mixin
    private NotebookOption notebook = new NotebookOption();

    NotebookCorrectCommand(Console console, CommandSpec spec) {
        this.console = console;
        this.spec = spec;
    }

    @Override
    public Integer call() {
        OperatorAction.Correct correction = new OperatorAction.Correct(pull, setting());
        KeptSession session = notebook.ended(id);
        notebook.writing(book -> {
            book.correct(session.id(), InstantSource.system().instant(), correction);
            return id;
        });
        console.out().println("Session " + id + ": " + ActText.of(correction));
        return ExitCodes.DONE;
    }

    private AskedSetting setting() {
        CommandLine at = spec.commandLine();
        require(advance.isEmpty() || offset.isEmpty(), "Give either --advance or --offset.");
        AskedSetting said = AskedSetting.none()
                .withValues(
                        advance.map(value -> degrees("--advance", value)),
                        offset.map(value -> degrees("--offset", value)),
                        lambda.map(value -> Conversions.lambda(at, "--lambda", value)))
                .withConfiguration(label, fuel);
        AskedSetting all = knock.map(word -> said.withKnock(mark(word))).orElse(said);
        require(
                !all.equals(AskedSetting.none()),
                "Say what is to be corrected: --advance, --lambda, --fuel, --label or --knock.");
        return all;
    }

    private Advance degrees(String option, double value) {
        require(Math.abs(value) <= MOST_DEG, option + " is at most 90 degrees: " + value);
        return Advance.ofDeg(value);
    }

    private KnockMark mark(String word) {
        require(word.equalsIgnoreCase("yes") || word.equalsIgnoreCase("no"), "--knock is yes or no, not " + word + ".");
        return word.equalsIgnoreCase("yes") ? KnockMark.HEARD : KnockMark.NONE;
    }

    private void require(boolean holds, String message) {
        if (!holds) {
            throw new ParameterException(spec.commandLine(), message);
        }
    }
}
