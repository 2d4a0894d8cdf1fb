package org.nextpull.cli;

import java.util.concurrent.Callable;
import org.nextpull.app.DayInput;
import org.nextpull.report.json.AdviseJson;
import org.nextpull.report.text.AdviseText;
import org.nextpull.session.Replay;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code replay}: a day pull by pull, as it would have gone live. */
@Command(
        name = "replay",
        mixinStandardHelpOptions = true,
        description = {
            "Goes through a day pull by pull, as it would have gone live.",
            "What it would have said after each pull, which alarms would have sounded, where it would have stopped, "
                    + "and how many pulls that saves."
        })
final class ReplayCommand implements Callable<Integer> {
    private final Console console;

    @Mixin
    private DayOptions day = new DayOptions();

    @Mixin
    private OutputOptions output = new OutputOptions();

    @Option(names = "--lines", description = "With --json: one line with one object for each pull.")
    private boolean lines;

    @Option(names = "--verbose", description = "After each pull also the reason, the map, and where it knocked.")
    private boolean verbose;

    ReplayCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        DayInput input = day.read();
        Replay replay = input.replay();
        if (output.isJson() && lines) {
            new AdviseJson().replayLines(replay).forEach(console.out()::println);
        } else if (output.isJson()) {
            console.out().println(new AdviseJson().replay(replay));
        } else {
            console.out().print(new AdviseText(output.shown()).replay(replay, verbose));
        }
        if (output.isJson()) {
            console.print(input.findings());
        }
        return input.someFailed() || replay.whole().isWithoutAnswer() ? ExitCodes.BAD_INPUT : ExitCodes.DONE;
    }
}
