package org.nextpull.cli;

import java.io.IOException;
import java.io.PrintWriter;
import org.nextpull.channel.EngineSetting;
import org.nextpull.finding.Finding;
import org.nextpull.report.AdviceText;
import org.nextpull.report.FindingText;
import org.nextpull.report.Shown;
import org.nextpull.simulator.ServeCommand;
import org.nextpull.simulator.ServedEngine;

/** The talk with a served engine: what is typed goes to it, what it does is told. */
final class ServeTalk implements ServedEngine.Listener {
    private static final String HELP = """
            Type   to
            26 0.87  set advance and lambda; one number where the plan sweeps one thing
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
                ServeTyped typed = ServeTyped.of(line, engine.plan());
                if (typed instanceof ServeTyped.Command command) {
                    engine.tell(command.command());
                } else if (typed instanceof ServeTyped.Wrong wrong) {
                    say(wrong.message());
                } else {
                    say(HELP.stripTrailing());
                }
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
}
