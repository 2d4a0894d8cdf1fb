package org.nextpull.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import org.nextpull.channel.EngineSetting;
import org.nextpull.finding.Finding;
import org.nextpull.plan.SweepPlan;
import org.nextpull.report.AdviceText;
import org.nextpull.report.FindingText;
import org.nextpull.report.Shown;
import org.nextpull.simulator.ServeCommand;
import org.nextpull.simulator.ServedEngine;

/** The talk with a served engine: what is typed goes to it, what it does is told. */
final class ServeTalk implements ServedEngine.Listener {
    private static final double USUAL_TROUBLE_S = 3;
    private static final double LONGEST_S = 3600;
    private static final String HELP = """
            Type   to
            26 0.87  set advance and lambda; one number where the plan sweeps one thing
            3500:18 5000:21  set a map, a cell each
            Enter  run a pull at what is set
            hold 4000  hold 4,000 rpm at full load; what is set meanwhile stands at once, idle ends it
            idle   lift off in the middle of a pull
            idle 30  idle for 30 s before what is typed next
            garbage 3  change one byte in ten on its way, for 3 s
            silence 3  send nothing for 3 s
            end    end the day and see the truth
            Lifting off and trouble happen at once; all else waits for the end of a pull.
            """;

    private final Console console;
    private final PrintWriter out;
    private final FindingText text;

    ServeTalk(Console console, Shown shown) {
        this.console = console;
        this.out = console.out();
        this.text = FindingText.in(shown);
    }

    /** Talks until the engine ends. */
    void hold(ServedEngine engine) throws InterruptedException {
        say("The engine idles, set to " + AdviceText.setting(engine.setting())
                + ". Type help to see what can be typed.");
        Thread typing = new Thread(() -> listen(engine), "typing");
        typing.setDaemon(true);
        typing.start();
        engine.awaitEnd();
    }

    private void listen(ServedEngine engine) {
        try {
            for (String line = console.in().readLine();
                    line != null;
                    line = console.in().readLine()) {
                understood(line, engine.plan()).ifPresent(engine::tell);
            }
        } catch (IOException broken) {
            say("Nothing more can be read: " + broken.getMessage());
        }
        engine.tell(new ServeCommand.End());
    }

    private void say(String words) {
        synchronized (out) {
            out.println(words);
            out.flush();
        }
    }

    @Override
    public void isSet(EngineSetting setting) {
        say("Set to " + AdviceText.setting(setting) + ".");
    }

    @Override
    public void pullBegan(int number, EngineSetting setting) {
        say("Pull " + number + " at " + AdviceText.setting(setting) + " ...");
    }

    @Override
    public void pullEnded(int number, boolean cutShort) {
        say("Pull " + number + (cutShort ? " was cut short." : " has ended."));
    }

    @Override
    public void said(Finding finding) {
        say(text.withPlace(finding));
    }

    /** What the engine is told by a line; empty where it is not understood, which is said. Settings are typed as in practice. */
    private Optional<ServeCommand> understood(String line, SweepPlan plan) {
        List<String> words = List.of(line.strip().toLowerCase(Locale.ROOT).split("\\s+"));
        return switch (words.get(0)) {
            case "idle", "lift" ->
                words.size() == 1
                        ? Optional.of(new ServeCommand.Lift())
                        : seconds(words, seconds -> new ServeCommand.Idle(seconds));
            case "hold" -> speed(words, plan);
            case "garbage" -> seconds(words, trouble(ServeCommand.Trouble.Kind.GARBAGE));
            case "silence" -> seconds(words, trouble(ServeCommand.Trouble.Kind.SILENCE));
            case "" -> Optional.of(new ServeCommand.Pull());
            case "end", "stop", "quit", "exit" -> Optional.of(new ServeCommand.End());
            case "help", "?" -> wrong(HELP.stripTrailing());
            default -> setting(TypedSetting.of(line, plan));
        };
    }

    private Optional<ServeCommand> wrong(String words) {
        say(words);
        return Optional.empty();
    }

    private static DoubleFunction<ServeCommand> trouble(ServeCommand.Trouble.Kind kind) {
        return seconds -> new ServeCommand.Trouble(kind, seconds);
    }

    private Optional<ServeCommand> seconds(List<String> words, DoubleFunction<ServeCommand> command) {
        OptionalDouble seconds =
                words.size() == 1 ? OptionalDouble.of(USUAL_TROUBLE_S) : TypedSetting.number(words.get(1));
        boolean known = words.size() <= 2
                && seconds.isPresent()
                && seconds.getAsDouble() > 0
                && seconds.getAsDouble() <= LONGEST_S;
        return known
                ? Optional.of(command.apply(seconds.getAsDouble()))
                : wrong(words.get(0) + " takes seconds, from a fraction to 3600, such as: " + words.get(0) + " 3");
    }

    private Optional<ServeCommand> speed(List<String> words, SweepPlan plan) {
        OptionalDouble rpm = words.size() == 2 ? TypedSetting.number(words.get(1)) : OptionalDouble.empty();
        boolean inBand = rpm.isPresent()
                && plan.band()
                        .filter(band -> band.fromRpm() <= rpm.getAsDouble() && rpm.getAsDouble() <= band.toRpm())
                        .isPresent();
        return inBand
                ? Optional.of(new ServeCommand.Hold(rpm.getAsDouble()))
                : wrong("hold takes a speed of the band, such as: hold 4000");
    }

    private Optional<ServeCommand> setting(TypedSetting typed) {
        typed.wrong().ifPresent(this::say);
        return typed.setting().map(ServeCommand.Set::new);
    }
}
