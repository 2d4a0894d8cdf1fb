package org.nextpull.cli;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.nextpull.app.PlanFile;
import org.nextpull.app.WrittenFiles;
import org.nextpull.finding.Outcome;
import org.nextpull.intake.serial.SerialPorts;
import org.nextpull.simulator.ServeOrder;
import org.nextpull.simulator.ServedEngine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code engine serve}: a logger on a serial port. */
@Command(
        name = "serve",
        mixinStandardHelpOptions = true,
        description = {
            "Sends an invented engine to a serial port, as a logger does: it idles, and runs a pull when told.",
            "Lines are made up as the plan's [[wire]] says; without one they are separated by commas under a header, "
                    + "at 115200 baud. Type a setting (26 0.87), Enter to run a pull at it, idle, garbage 3, silence 3, end, or "
                    + "help."
        })
final class EngineServeCommand implements Callable<Integer> {
    private final Console console;

    @Spec
    private CommandSpec spec;

    @Option(names = "--plan", required = true, paramLabel = "PLAN", description = "Sweep plan (TOML).")
    private String plan = "";

    @Option(
            names = "--port",
            required = true,
            paramLabel = "DEV",
            description = "Port to send to; once for each [[wire]] of the plan, in its order.")
    private List<String> ports = new ArrayList<>();

    @Option(
            names = "--seed",
            paramLabel = "N",
            description = "Whole number that decides engine, day and noise (default: a random one, which is told).")
    private Optional<Long> seed = Optional.empty();

    @Option(
            names = "--speed",
            paramLabel = "X",
            defaultValue = "1",
            description =
                    "Times as fast as a real engine, 0.1 to 100 (default: ${DEFAULT-VALUE}). A reader then sees pulls that much "
                            + "steeper: use it to try the connection, not to measure.")
    private double speed;

    @Option(
            names = "--truth",
            paramLabel = "FILE",
            description = "Write the truth to this file at the end instead of showing it.")
    private Optional<String> truth = Optional.empty();

    @Mixin
    private OutputOptions.Units units = new OutputOptions.Units();

    EngineServeCommand(Console console, CommandSpec spec) {
        this.console = console;
        this.spec = spec;
    }

    @Override
    public Integer call() throws InterruptedException {
        if (speed < ServeOrder.SLOWEST || speed > ServeOrder.FASTEST) {
            throw new ParameterException(spec.commandLine(), "--speed lies between 0.1 and 100, not at " + speed);
        }
        PlanFile file = console.said(PlanFile.read(plan));
        Optional<Path> written = truth.map(EngineServeCommand::writable);
        written.ifPresent(target -> TextFile.require(WrittenFiles.of(target), List.of(file.path())));
        long chosen = EngineCommand.seed(seed, console);
        ServeTalk talk = new ServeTalk(console, units.shown());
        Outcome<ServedEngine> outcome =
                ServedEngine.start(new ServeOrder(file.plan(), chosen, ports, speed), new SerialPorts(), talk);
        ServedEngine engine = Program.usable(outcome);
        try (Interruption interruption = Interruption.ending(engine::stop)) {
            talk.hold(engine);
            finish(engine, written);
            return interruption.status();
        }
    }

    private void finish(ServedEngine engine, Optional<Path> file) {
        if (file.isPresent()) {
            write(file.get(), engine.truth());
        } else {
            console.out().println();
            console.out().print(new DebriefText(units.shown()).text(engine.debrief()));
        }
        console.out().flush();
    }

    private void write(Path file, String text) {
        TextFile.write(file, text);
        console.out().println(file + ": truth");
    }

    /** The file, if its folder is there: a day is too long to learn at its end that it is not. */
    private static Path writable(String name) {
        try {
            Path file = Path.of(name);
            Path folder = file.toAbsolutePath().getParent();
            if (folder == null || !Files.isWritable(folder) || Files.isDirectory(file)) {
                throw TextFile.notWritable(name, "there is no such folder, or it may not be written to");
            }
            return file;
        } catch (InvalidPathException fault) {
            throw TextFile.notWritable(name, fault);
        }
    }

    /** Ends something that runs on in good order when the program is interrupted: the program waits until the command has told all. */
    private static final class Interruption implements AutoCloseable {
        private static final long PATIENCE_S = 8;

        private final CountDownLatch told = new CountDownLatch(1);
        private final Thread hook;
        private volatile boolean interrupted;

        private Interruption(Runnable stop) {
            this.hook = new Thread(() -> end(stop), "interruption");
        }

        /** From now until it is closed an interruption stops what runs. */
        static Interruption ending(Runnable stop) {
            Interruption interruption = new Interruption(stop);
            Runtime.getRuntime().addShutdownHook(interruption.hook);
            return interruption;
        }

        private void end(Runnable stop) {
            interrupted = true;
            stop.run();
            try {
                if (!told.await(PATIENCE_S, TimeUnit.SECONDS)) {
                    Thread.currentThread().interrupt();
                }
            } catch (InterruptedException stopped) {
                Thread.currentThread().interrupt();
            }
        }

        /** Exit status of the command so far. */
        int status() {
            return interrupted ? ExitCodes.INTERRUPTED : ExitCodes.DONE;
        }

        @Override
        public void close() {
            told.countDown();
            if (!interrupted) {
                Runtime.getRuntime().removeShutdownHook(hook);
            }
        }
    }
}
