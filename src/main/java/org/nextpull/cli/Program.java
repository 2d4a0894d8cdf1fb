package org.nextpull.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.nextpull.finding.Finding;
import org.nextpull.finding.Outcome;
import org.nextpull.report.json.FindingsJson;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The command line as a whole: its commands, and the one place where failures become messages and exit statuses. */
@Command(
        name = "nextpull",
        mixinStandardHelpOptions = true,
        addMethodSubcommands = false,
        versionProvider = Program.Version.class,
        description = {
            "Reads dyno logs and finds the least spark advance and the mixture that make best torque: it says what to "
                    + "set for the next pull or when to stop, and why, and whether a part or a fuel gained anything.",
            "",
            "It advises; it protects nothing. Rely on the cell's own stops, guards and ventilation, keep to the "
                    + "makers' limits and local codes, and let a qualified person decide every setting."
        },
        synopsisSubcommandLabel = "COMMAND")
final class Program implements Runnable {
    /** The names that picocli gives to it. */
    private static final Set<String> VERSION = Set.of("-V", "--version");

    @Spec
    private CommandSpec spec;

    private final Console console;

    private Program(Console console, CommandSpec spec) {
        this.console = console;
        this.spec = spec;
    }

    /**
     * The command that is asked for first, none for the version, all otherwise: what a command reads of its own annotations takes as long
     * as many a command itself.
     */
    static CommandLine commandLine(Console console, String... args) {
        CommandLine line = new CommandLine(new Program(console, CommandSpec.create()));
        Map<String, Supplier<Object>> all = commands(console);
        boolean isVersion = args.length == 1 && VERSION.contains(args[0]);
        Set<String> wanted =
                isVersion || (args.length > 0 && all.containsKey(args[0])) ? Set.of(args[0]) : all.keySet();
        all.forEach((name, command) -> {
            if (wanted.contains(name)) {
                line.addSubcommand(name, command.get());
            }
        });
        Conversions.register(line);
        line.setOut(console.out());
        line.setErr(console.err());
        // codes of colours are escape codes, which never reach the terminal
        line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
        line.setUsageHelpAutoWidth(true);
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setParameterExceptionHandler((fault, words) -> wrongUsage(console, fault, words));
        line.setExecutionExceptionHandler((fault, at, parsed) -> failed(console, fault, isJson(parsed.originalArgs())));
        return line;
    }

    private static Map<String, Supplier<Object>> commands(Console console) {
        Map<String, Supplier<Object>> commands = new LinkedHashMap<>();
        commands.put("inspect", () -> new InspectCommand(console));
        commands.put("advise", () -> new AdviseCommand(console));
        commands.put("replay", () -> new ReplayCommand(console));
        commands.put("live", () -> new LiveCommand(console, CommandSpec.create()));
        commands.put("compare", () -> new CompareCommand(console, CommandSpec.create()));
        commands.put("report", () -> new ReportCommand(console));
        commands.put("plan", () -> new PlanCommand(console, CommandSpec.create()));
        commands.put("plan-pulls", () -> new PlanPullsCommand(console, CommandSpec.create()));
        commands.put("fuel", () -> FuelCommand.commandLine(console));
        commands.put("air", () -> new AirCommand(console));
        commands.put("engine", () -> EngineCommand.commandLine(console));
        commands.put("notebook", () -> NotebookCommand.commandLine(console));
        commands.put("window", () -> new WindowCommand(console));
        return commands;
    }

    @Override
    public void run() {
        spec.commandLine().usage(console.out());
    }

    private static int wrongUsage(Console console, CommandLine.ParameterException fault, String[] args) {
        String message = String.valueOf(fault.getMessage());
        CommandLine at = fault.getCommandLine();
        if (isJson(Arrays.asList(args))) {
            console.out().println(new FindingsJson().failure("wrong-usage", message));
        }
        console.err().println(message);
        if (!CommandLine.UnmatchedArgumentException.printSuggestions(fault, console.err())) {
            console.err().println("See: " + at.getCommandSpec().qualifiedName() + " --help");
        }
        return ExitCodes.WRONG_USAGE;
    }

    private static int failed(Console console, Exception fault, boolean json) {
        if (fault.getCause() instanceof Error error) {
            // a command that is a method wraps what Main answers last
            throw error;
        }
        if (fault instanceof BadInput bad) {
            if (json) {
                console.out().println(new FindingsJson().failure(bad.findings()));
            }
            console.print(bad.findings());
            return ExitCodes.BAD_INPUT;
        }
        return fault(console, fault, json);
    }

    /** A fault of the program: its trace goes into a file, and the user learns where that is. */
    static int fault(Console console, Throwable fault, boolean json) {
        String logged = logged(fault);
        String message = "A fault of the program, not of your data; please report it with the file " + logged + ".";
        if (json) {
            console.out().println(new FindingsJson().failure("fault", message));
        }
        console.err().println(message);
        return ExitCodes.FAULT;
    }

    /** What came out, or gives up with why nothing did. */
    static <T> T usable(Outcome<T> outcome) {
        return outcome.value().orElseThrow(() -> new BadInput(outcome.findings()));
    }

    private static boolean isJson(List<String> args) {
        return args.contains("--json");
    }

    /** Thrown by a command whose input cannot be used at all. */
    static final class BadInput extends RuntimeException {
        private static final long serialVersionUID = 1;
        private final transient List<Finding> findings;

        BadInput(List<Finding> findings) {
            super("the input cannot be used");
            this.findings = List.copyOf(findings);
        }

        List<Finding> findings() {
            return findings;
        }
    }

    /** Writes the trace and gives the name of the file, or says that it could not be written. */
    private static String logged(Throwable fault) {
        try {
            Path file = Files.createTempFile("nextpull-fault-", ".log");
            try (PrintWriter writer = new PrintWriter(Files.newBufferedWriter(file, StandardCharsets.UTF_8))) {
                fault.printStackTrace(writer);
            }
            return file.toString();
        } catch (IOException full) {
            return "(which could not be written: " + full.getMessage() + ")";
        }
    }

    /** The version of the jar and the commit that it was built from. */
    static String version() {
        return "nextpull "
                + Optional.ofNullable(Main.class.getPackage().getImplementationVersion())
                        .orElse("built from sources");
    }

    /** The version, and the Java that runs it. */
    static final class Version implements CommandLine.IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {version(), "Java " + Runtime.version() + ", " + System.getProperty("java.vm.name")};
        }
    }
}
