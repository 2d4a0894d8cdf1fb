package org.nextpull.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.nextpull.app.NotebookAccess;
import org.nextpull.app.PlanFile;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.intake.serial.SerialPorts;
import org.nextpull.live.LiveIntake;
import org.nextpull.live.LiveSession;
import org.nextpull.live.NotebookKeeper;
import org.nextpull.live.PlanPorts;
import org.nextpull.live.SessionFolders;
import org.nextpull.notebook.KeptSession;
import org.nextpull.notebook.SessionStart;
import org.nextpull.report.Cautions;
import org.nextpull.report.Shown;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code live}: a running session. */
@Command(
        name = "live",
        mixinStandardHelpOptions = true,
        description = {
            "Runs a session at the dyno: reads a serial port or a folder, and says after each pull what to set next.",
            "It keeps every byte and sounds alarms. It advises; it protects nothing. Type help while it runs."
        })
final class LiveCommand implements Callable<Integer> {
    private static final String ACCEPT = "--accept-cautions";
    private static final String NEWEST = "newest";

    /** How long a port is waited for: one that was just plugged in needs a moment. */
    private static final Duration PATIENCE = Duration.ofSeconds(3);

    private final Console console;

    private final SerialPorts ports = new SerialPorts();

    @Spec
    private CommandSpec spec;

    @Option(names = "--plan", required = true, paramLabel = "PLAN", description = "Sweep plan (TOML).")
    private String plan = "";

    @Option(
            names = "--port",
            paramLabel = "DEV",
            description =
                    "Serial port, such as COM3 or /dev/ttyUSB0; the plan's [[wire]] says how it is set and what its lines are.")
    private Optional<String> port = Optional.empty();

    @Option(names = "--folder", paramLabel = "DIR", description = "Folder into which a logger writes CSV logs.")
    private Optional<Path> folder = Optional.empty();

    @Mixin
    private NotebookOption notebook = new NotebookOption();

    @Option(
            names = "--resume",
            arity = "0..1",
            fallbackValue = NEWEST,
            paramLabel = "ID",
            description =
                    "Continue a session after the program ended: this one of the notebook, or the last one begun.")
    private Optional<String> resume = Optional.empty();

    @Option(names = ACCEPT, description = "You have read the cautions; needed without a terminal.")
    private boolean accepted;

    @Option(
            names = "--json",
            description =
                    "Print what happens as JSON, an object a line; the words for people then go to standard error.")
    private boolean json;

    @Mixin
    private OutputOptions.Units units = new OutputOptions.Units();

    LiveCommand(Console console, CommandSpec spec) {
        this.console = console;
        this.spec = spec;
    }

    @Override
    public Integer call() throws IOException {
        PlanFile file = console.said(PlanFile.read(plan));
        LiveIntake intake = intake(file);
        if (!cautionsAreAccepted()) {
            return ExitCodes.WRONG_USAGE;
        }
        List<Finding> missing = PlanPorts.missing(intake, ports, PATIENCE);
        if (!missing.isEmpty()) {
            throw new Program.BadInput(missing);
        }
        SessionFolders folders = SessionFolders.beside(notebook.file());
        try (SessionFolders.Claim claim = claim(folders)) {
            run(file, intake, claim);
        }
        return ExitCodes.DONE;
    }

    private void run(PlanFile file, LiveIntake intake, SessionFolders.Claim claim) throws IOException {
        NotebookAccess days = notebook.access();
        SessionStart start = new SessionStart(
                InstantSource.system().instant(),
                Program.version(),
                plan,
                file.text(),
                Optional.of(claim.folder().toString()));
        LiveSession.Setup setup = new LiveSession.Setup(
                file.plan(),
                intake,
                claim,
                console.said(
                        resume.isPresent()
                                ? days.experienceAtStart(claim.folder(), file)
                                : days.experience(file.plan())),
                NotebookKeeper.open(notebook.file(), start),
                ports,
                LiveSession.Setup.Clock.system());
        run(setup, units.shown());
    }

    private void run(LiveSession.Setup setup, Shown shown) throws IOException {
        AsyncPrinter out = new AsyncPrinter(forPeople(), ZoneId.systemDefault(), Terminal.width());
        LiveTalk talk = new LiveTalk(out, shown);
        List<AsyncPrinter> printers = new ArrayList<>(List.of(out));
        LiveSession.Listener listener = talk;
        if (json) {
            AsyncPrinter lines = new AsyncPrinter(console.out(), ZoneId.systemDefault(), Terminal.width());
            printers.add(lines);
            listener = new LiveLines(lines, talk);
        }
        LiveSession session = LiveSession.start(setup, listener);
        OrderlyEnd ending = OrderlyEnd.by(() -> end(talk, session, printers));
        try {
            converse(talk, session);
        } finally {
            end(talk, session, printers);
            ending.done();
        }
    }

    private PrintWriter forPeople() {
        return json ? console.err() : console.out();
    }

    private static void end(LiveTalk talk, LiveSession session, List<AsyncPrinter> printers) {
        talk.ending();
        session.close();
        talk.ended(session.state());
        printers.forEach(AsyncPrinter::close);
    }

    private void converse(LiveTalk talk, LiveSession session) throws IOException {
        boolean goesOn = true;
        while (goesOn) {
            String line = console.in().readLine();
            if (line != null) {
                goesOn = talk.answer(line, session);
            } else if (Terminal.isThere()) {
                goesOn = false;
            } else {
                // nobody types: it runs until it is interrupted
                session.awaitEnd();
                goesOn = false;
            }
        }
    }

    private LiveIntake intake(PlanFile file) {
        if (port.isPresent() && folder.isPresent()) {
            throw new CommandLine.ParameterException(
                    spec.commandLine(), "A session reads --port or --folder, not both.");
        }
        if (folder.isPresent()) {
            return Program.usable(LiveIntake.ofFolder(folder.get().toString()));
        }
        if (port.isEmpty()
                && file.plan().wires().stream().noneMatch(wire -> wire.device().isPresent())) {
            throw new CommandLine.ParameterException(
                    spec.commandLine(),
                    "Name what to read: --port DEV or --folder DIR, or a device in the plan's [[wire]].");
        }
        return Program.usable(PlanPorts.of(file.plan(), port).map(ports -> ports));
    }

    private boolean cautionsAreAccepted() throws IOException {
        Cautions.sentences().forEach(forPeople()::println);
        forPeople().flush();
        if (accepted) {
            return true;
        }
        if (!Terminal.isThere()) {
            console.err().println("There is no terminal to ask; accept the cautions above with " + ACCEPT + ".");
            return false;
        }
        forPeople().print("Type yes to accept this and go on: ");
        forPeople().flush();
        String answer = console.in().readLine();
        if (answer == null || !answer.strip().equalsIgnoreCase("yes")) {
            console.err().println("Not accepted, so no session was started.");
            return false;
        }
        return true;
    }

    private SessionFolders.Claim claim(SessionFolders folders) throws IOException {
        if (resume.isEmpty()) {
            return folders.claimFresh(InstantSource.system().instant());
        }
        Path session = resume.get().equals(NEWEST)
                ? folders.newest()
                        .orElseThrow(() -> refused(Finding.error(
                                FindingCode.LIVE_NOTHING_TO_RESUME,
                                Place.nowhere(),
                                Detail.of("folder", folders.folder().toString()))))
                : folder(resume.get());
        return folders.claim(session)
                .orElseThrow(
                        () -> refused(Finding.error(FindingCode.LIVE_SESSION_RUNS, Place.inFile(session.toString()))));
    }

    /** Where the raw data of a session of the notebook lie. */
    private Path folder(String number) {
        if (!number.matches("[0-9]{1,18}")) {
            throw new CommandLine.ParameterException(
                    spec.commandLine(), "--resume takes the number of a session, as notebook list shows it: " + number);
        }
        KeptSession session = notebook.reading(book -> book.session(Long.parseLong(number)));
        return session.start()
                .capture()
                .map(Path::of)
                .filter(Files::isDirectory)
                .orElseThrow(() -> refused(Finding.error(
                        FindingCode.LIVE_WITHOUT_CAPTURE, Place.nowhere(), Detail.of("session", number))));
    }

    private static Program.BadInput refused(Finding finding) {
        return new Program.BadInput(List.of(finding));
    }
}
