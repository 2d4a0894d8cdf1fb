package org.nextpull.live;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.nextpull.alarm.Alarm;
import org.nextpull.finding.FindingCode;
import org.nextpull.intake.serial.Port;
import org.nextpull.intake.serial.SerialPorts;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.ArrivalTime;
import org.nextpull.intake.wire.Chunk;
import org.nextpull.intake.wire.WireSource;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanText;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.OperatorAction;

/** A running day without threads and clocks: the test says what arrives and when. All that arrives is kept, as a capture would. */
final class HandDriven implements DayEvents {
    static final String PORT = "/dev/test";
    private static final double HZ = 50;
    private static final long WALL_MS = 1_700_000_000_000L;
    private static final double NS = 1e9;

    final List<Arrival> captured = new ArrayList<>();
    final List<Alarm.Event> alarms = new ArrayList<>();
    final List<Double> alarmAtS = new ArrayList<>();
    final List<LiveState.Notice> notices = new ArrayList<>();
    final List<MeasuredPull> ended = new ArrayList<>();
    final List<Double> endedAtS = new ArrayList<>();
    final LiveDay day;
    private final Row row;
    private final Keeper keeper;
    double nowS = 1;

    /** How a row is written. */
    @FunctionalInterface
    interface Row {
        String of(double rpm, double torque, double throttle);
    }

    static SweepPlan plan(String more) {
        String text = """
                [band]
                from_rpm = 3000
                to_rpm = 5500
                [timing]
                start_deg = 20
                least_deg = 10
                most_deg = 46
                """ + more;
        return PlanText.read(text, "test.toml").value().orElseThrow();
    }

    static LiveSession.Setup setup(SweepPlan plan) {
        LiveIntake.Wire port =
                new LiveIntake.Wire(Port.Settings.usual(PORT, 115_200), WireSource.LineSettings.withHeaderLine());
        return new LiveSession.Setup(
                plan,
                new LiveIntake.Ports(List.of(port)),
                SessionFolders.Claim.of(
                                Path.of("target", "nowhere", UUID.randomUUID().toString()))
                        .orElseThrow(),
                Optional.empty(),
                Keeper.none(),
                new SerialPorts(),
                new LiveSession.Setup.Clock(() -> 0, InstantSource.system()));
    }

    HandDriven(SweepPlan plan, String header, Row row) {
        this(setup(plan), row);
        begun(header);
    }

    /** One to which nothing has happened yet. */
    HandDriven(LiveSession.Setup setup, Row row) {
        this.row = row;
        this.keeper = setup.keeper();
        this.day = new LiveDay(setup, at(), new AdviceDesk(Runnable::run, setup.keeper()), this);
    }

    ArrivalTime at() {
        return new ArrivalTime((long) (nowS * NS), WALL_MS + (long) (nowS * 1000));
    }

    void arrive(Arrival arrival) {
        captured.add(arrival);
        day.accept(arrival);
        day.takeAnswers();
    }

    void line(String text) {
        arrive(Chunk.of(PORT, at(), text + "\n"));
    }

    void tell(OperatorAction act) {
        arrive(Chunk.of(OperatorLines.SOURCE, at(), OperatorLines.line(act)));
    }

    /** Time passes and nothing arrives. */
    void silence(double seconds) {
        long ticks = Math.round(seconds * 10);
        for (int tick = 0; tick < ticks; tick++) {
            nowS += 0.1;
            day.tick(at());
            day.takeAnswers();
        }
    }

    void rows(double seconds, double fromRpm, double toRpm, double throttle, double factor) {
        long count = Math.round(seconds * HZ);
        for (int index = 0; index < count; index++) {
            double rpm = fromRpm + (toRpm - fromRpm) * index / count;
            double torque = throttle > 0.9 ? factor * (205 - 9e-6 * (rpm - 4600) * (rpm - 4600)) : 4;
            line(row.of(rpm, torque, 100 * throttle));
            nowS += 1 / HZ;
            day.tick(at());
            day.takeAnswers();
        }
    }

    void idle(double seconds) {
        rows(seconds, 1500, 1500, 0.1, 1);
    }

    /** The engine is at full load from below the band to above it. */
    void load(double factor) {
        rows(6, 2800, 5800, 1, factor);
    }

    void pull(double factor) {
        load(factor);
        idle(4);
    }

    /** Connects, sends a header and idles for a while. */
    HandDriven begun(String header) {
        arrive(new Arrival.Connected(PORT, at()));
        line(header);
        idle(3);
        return this;
    }

    LiveState state() {
        return day.state(new LiveState.CaptureState(Path.of("nowhere"), 0, Optional.empty(), at()), keeper);
    }

    List<FindingCode> codes() {
        return notices.stream().map(notice -> notice.finding().code()).toList();
    }

    MeasuredPull pullOf(int number) {
        return state().result().pulls().get(number - 1);
    }

    /** The same again from what was captured. */
    HandDriven replayed(LiveSession.Setup setup) {
        HandDriven again = new HandDriven(setup, row);
        again.day.replaying();
        for (Arrival arrival : captured) {
            again.nowS = arrival.at().seconds();
            again.captured.add(arrival);
            again.day.accept(arrival);
        }
        again.nowS = nowS;
        again.day.tick(again.at());
        again.day.goOn();
        return again;
    }

    static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }

    @Override
    public void alarm(Alarm.Event event) {
        alarms.add(event);
        alarmAtS.add(nowS);
    }

    @Override
    public void said(LiveState.Notice notice) {
        notices.add(notice);
    }

    @Override
    public void pullFound() {}

    @Override
    public void pullEnded(MeasuredPull.Curve pull) {
        ended.add(pull.pull());
        endedAtS.add(nowS);
    }

    @Override
    public void acted(OperatorAction act) {
        captured.add(Chunk.of(OperatorLines.SOURCE, at(), OperatorLines.line(act)));
    }

    @Override
    public void changed() {}
}
