package org.nextpull.cli;

import java.io.IOException;
import java.security.SecureRandom;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.nextpull.app.PlanFile;
import org.nextpull.finding.Outcome;
import org.nextpull.report.Shown;
import org.nextpull.simulator.Practice;
import org.nextpull.unit.UnitSystem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code engine practise}: a day in which the user plays operator. */
@Command(
        name = "practise",
        mixinStandardHelpOptions = true,
        description = {
            "A practice day on the model engine: it proposes, you set, the engine pulls, the advice moves on, and at the end it shows "
                    + "what the truth was.",
            "Type a setting (26 0.87), Enter for what is proposed, why, exclude 3, end, or help."
        })
final class EnginePractiseCommand implements Callable<Integer> {
    private static final int SEEDS = 1_000_000;

    private final Console console;

    @Option(names = "--plan", required = true, paramLabel = "PLAN", description = "Sweep plan (TOML).")
    private String plan = "";

    @Option(
            names = "--seed",
            paramLabel = "N",
            description = "Whole number that decides engine, day and noise; drawn and told when left out.")
    private Optional<Long> seed = Optional.empty();

    @Option(
            names = "--units",
            paramLabel = "metric|us",
            defaultValue = "metric",
            description = "Units that people read: ${COMPLETION-CANDIDATES} (default: ${DEFAULT-VALUE}).")
    private UnitSystem units = UnitSystem.METRIC;

    EnginePractiseCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws IOException {
        PlanFile file = Messages.said(console.err(), PlanFile.read(plan));
        long chosen = seed.orElseGet(() -> (long) new SecureRandom().nextInt(SEEDS));
        console.err().println("Building the engine of seed " + chosen + "; --seed " + chosen + " brings it back.");
        Outcome<Practice> outcome = Practice.start(file.plan(), chosen);
        Practice practice = Program.usable(outcome);
        PracticeTalk talk = new PracticeTalk(console, practice, new Shown(units));
        OrderlyEnd ending = OrderlyEnd.by(talk::interrupted);
        talk.hold();
        ending.done();
        return ExitCodes.DONE;
    }
}
