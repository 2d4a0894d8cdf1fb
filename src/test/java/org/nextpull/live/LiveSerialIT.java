package org.nextpull.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.nextpull.channel.Recording;
import org.nextpull.finding.FindingCode;
import org.nextpull.intake.capture.CaptureFolder;
import org.nextpull.intake.csv.Input;
import org.nextpull.intake.csv.LogFiles;
import org.nextpull.intake.serial.Port;
import org.nextpull.intake.serial.PtyPair;
import org.nextpull.intake.serial.SerialPorts;
import org.nextpull.intake.wire.WireSource;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanText;
import org.nextpull.response.Figures;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.OperatorAction;
import org.nextpull.session.Session;
import org.nextpull.session.SessionInput;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.Torque;

/** A session on a real pseudo-terminal, over which a day of the model engine is sent ten times as fast as it was run. */
class LiveSerialIT {
    private static final int FASTER = 4;
    private static final Path PLAN = Path.of("sweep-plans", "hillclimb-e10-timing.toml");
    private static final Path LOG = Path.of("sample-logs", "hillclimb-e10-timing.csv");

    private static SweepPlan plan() throws Exception {
        return PlanText.read(Files.readString(PLAN), PLAN.toString()).value().orElseThrow();
    }

    private static ModelDay day() throws Exception {
        return new ModelDay(Files.readString(LOG)).withoutTime();
    }

    private static LiveSession.Setup setup(String device, Path captures) throws Exception {
        LiveIntake.Wire port =
                new LiveIntake.Wire(Port.Settings.usual(device, 115_200), WireSource.LineSettings.withHeaderLine());
        return new LiveSession.Setup(
                plan(),
                new LiveIntake.Ports(List.of(port)),
                SessionFolders.Claim.of(captures).orElseThrow(),
                Optional.empty(),
                Keeper.none(),
                new SerialPorts(),
                FastClock.times(FASTER, 1_790_000_000_000L));
    }

    private static Port open(String device) {
        return new SerialPorts()
                .open(Port.Settings.usual(device, 115_200))
                .value()
                .orElseThrow();
    }

    private static SessionInput logs(Path log) throws Exception {
        List<Recording> recordings = new ArrayList<>();
        new LogFiles(plan().log().hints())
                .read(List.of(log.toString()))
                .good()
                .forEach(input -> recordings.add(((Input.Log) input).recording()));
        return SessionInput.of(plan(), recordings, List.of());
    }

    private static double torque(MeasuredPull pull) {
        return pull.figures()
                .flatMap(Figures::meanTorque)
                .map(Torque::newtonMetres)
                .orElseThrow();
    }

    @Test
    @Timeout(300)
    void aDayOverAWireGivesWhatItsRowsGiveAsALogAndItsCaptureTheIdenticalResult(@TempDir Path temp) throws Exception {
        SessionResult written = Session.evaluate(logs(LOG));
        Path captures = temp.resolve("session");
        ModelDay day = day();
        Heard heard = new Heard();
        LiveState live;
        LiveSession.Setup setup;
        try (PtyPair pair = PtyPair.plugIn(temp);
                Port far = open(pair.far())) {
            setup = setup(pair.near(), captures);
            LiveSession session = LiveSession.start(setup, heard);
            try (session) {
                Heard.await(session, state -> heard.heard(FindingCode.WIRE_CONNECTED));
                day.send(far, 0, day.lines().size(), FASTER);
                Heard.await(session, state -> state.nextPull() > written.pulls().size());
                session.tell(new OperatorAction.Strike(3, "test"));
                Heard.await(session, state -> !state.acts().all().isEmpty());
            }
            live = session.state();
        }
        List<MeasuredPull> pulls = live.result().pulls();
        assertThat(pulls).hasSize(written.pulls().size());
        for (int pull = 0; pull < pulls.size(); pull++) {
            // the wire's clock is not the logger's: what is read off times differs by little
            assertThat(torque(pulls.get(pull))).isCloseTo(torque(written.pulls().get(pull)), within(0.3));
        }
        Path asLog = Files.writeString(
                temp.resolve("rows.csv"),
                RowsAsLog.of(new CaptureFolder(captures), new DayIntake(setup.intake()), plan()));
        SessionResult advised = Session.evaluate(live.acts().applied(logs(asLog)));
        for (int pull = 0; pull < pulls.size(); pull++) {
            assertThat(torque(pulls.get(pull))).isCloseTo(torque(advised.pulls().get(pull)), within(1e-6));
            assertThat(pulls.get(pull).standing())
                    .isEqualTo(advised.pulls().get(pull).standing());
        }
        assertThat(live.result().verdict().orElseThrow().chosen())
                .isEqualTo(advised.verdict().orElseThrow().chosen());
        LiveSession again = LiveSession.start(setup, new Heard());
        try (again) {
            Heard.await(again, state -> state.nextPull() == live.nextPull());
        }
        assertThat(again.state().result().pulls()).isEqualTo(pulls);
        assertThat(again.state().result().verdict().orElseThrow().chosen())
                .isEqualTo(live.result().verdict().orElseThrow().chosen());
    }

    @Test
    @Timeout(120)
    void unpluggedInMidPullAndPluggedInAgainTheSessionGoesOn(@TempDir Path temp) throws Exception {
        ModelDay day = day();
        Heard heard = new Heard();
        int firstOff = loadOff(day, 0);
        int secondOn = loadOn(day, firstOff);
        LiveSession session;
        try (PtyPair pair = PtyPair.plugIn(temp)) {
            session = LiveSession.start(setup(pair.near(), temp.resolve("session")), heard);
            try (Port far = open(pair.far())) {
                Heard.await(session, state -> heard.heard(FindingCode.WIRE_CONNECTED));
                day.send(far, 0, secondOn + 60, FASTER);
                Heard.await(
                        session,
                        state -> state.nextPull() == 2 && state.pullSinceS().isPresent());
            }
        }
        try (session) {
            Heard.await(session, state -> state.links().get(0).link() == LiveState.LinkState.Link.LOST);
            Heard.await(session, state -> state.result().pulls().size() == 2);
            assertThat(session.state().result().pulls().get(0).isUsed()).isTrue();
            assertThat(session.state().result().pulls().get(1).isUsed()).isFalse();
            assertThat(session.state().result().pulls().get(1).findings())
                    .anyMatch(finding -> finding.code() == FindingCode.PULL_DATA_STOPPED);
            assertThat(heard.heard(FindingCode.WIRE_UNPLUGGED)).isTrue();
            try (PtyPair again = PtyPair.plugIn(temp);
                    Port far = open(again.far())) {
                Heard.await(session, state -> state.links().get(0).link() == LiveState.LinkState.Link.CONNECTED);
                int thirdOff = loadOff(day, loadOn(day, loadOff(day, secondOn)));
                day.send(far, loadOff(day, secondOn), thirdOff + 60, FASTER);
                Heard.await(session, state -> state.result().pulls().size() == 3);
            }
        }
        assertThat(session.state().result().pulls().get(2).findings())
                .noneMatch(finding -> finding.code() == FindingCode.PULL_DATA_STOPPED);
    }

    private static int loadOn(ModelDay day, int from) {
        int line = from;
        while (!isLoaded(day, line)) {
            line++;
        }
        return line;
    }

    private static int loadOff(ModelDay day, int from) {
        int line = loadOn(day, from);
        while (isLoaded(day, line)) {
            line++;
        }
        return line;
    }

    private static boolean isLoaded(ModelDay day, int line) {
        return Double.parseDouble(day.lines().get(line).split(",", -1)[3]) > 90;
    }
}
