package org.nextpull.live;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.nextpull.intake.serial.Port;
import org.nextpull.intake.serial.SerialPorts;
import org.nextpull.intake.wire.WireSource;
import org.nextpull.notebook.SessionStart;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.WireFacts;
import org.nextpull.plan.text.PlanText;
import org.nextpull.response.MeasuredPull;

/** A program that runs a session on a port and says each pull, until it is killed. */
final class LiveChild {
    static final int FASTER = 10;

    private LiveChild() {}

    static SweepPlan plan() {
        return HandDriven.plan("");
    }

    static LiveSession.Setup setup(String device, Path captures, Path notebook) {
        LiveIntake.Wire port = new LiveIntake.Wire(
                Port.Settings.usual(device, 115_200),
                new WireSource.LineSettings(
                        WireFacts.Lines.SEPARATED, List.of("rpm", "torque [Nm]", "throttle [%]"), 0, 0));
        SessionStart start = new SessionStart(
                Instant.now(), "test", "plan.toml", PlanText.write(plan()), Optional.of(captures.toString()));
        return new LiveSession.Setup(
                plan(),
                new LiveIntake.Ports(List.of(port)),
                SessionFolders.Claim.of(captures).orElseThrow(),
                Optional.empty(),
                NotebookKeeper.open(notebook, start),
                new SerialPorts(),
                FastClock.times(FASTER, System.currentTimeMillis()));
    }

    public static void main(String[] arguments) throws Exception {
        LiveSession.Listener saying = new LiveSession.Listener() {
            @Override
            public void pullEnded(LiveState state, MeasuredPull.Curve pull) {
                System.out.println("pull " + pull.pull().number());
            }
        };
        LiveSession session =
                LiveSession.start(setup(arguments[0], Path.of(arguments[1]), Path.of(arguments[2])), saying);
        // a session that was resumed knows its pulls from its first moment on, and asks for no first one
        System.out.println("resumed " + (session.state().nextPull() - 1));
        session.awaitEnd();
    }
}
