package org.nextpull.live;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.nextpull.alarm.Alarm;
import org.nextpull.intake.folder.FolderSettings;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.ArrivalTime;
import org.nextpull.intake.wire.Chunk;
import org.nextpull.intake.wire.Fingerprint;
import org.nextpull.plan.Band;
import org.nextpull.plan.SweepPlan;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.OperatorAction;
import org.nextpull.unit.SpeedBand;
import org.tinylog.Logger;

/**
 * A day that nobody runs, gone through while a session waits for its first file: some pulls in a log that is only in memory, read and
 * advised over under the session's plan. The code of the whole chain is loaded and has run once by then; loading it takes over a second,
 * which the first answer would have to wait for. What comes out goes nowhere.
 */
final class PracticeDay implements DayEvents {
    private static final SpeedBand USUAL = new SpeedBand(3000, 6000);
    private static final double BESIDE_RPM = 400;
    private static final double STEP_S = 0.05;
    private static final double RPM_A_ROW = 40;
    private static final int IDLE_ROWS = 30;
    private static final List<Integer> ADVANCES_DEG = List.of(14, 14, 18, 22, 26, 30);
    private static final String WEATHER = ",0,700,86,19,98.4,54";
    private static final String IDLE = "0.5,5,1.000,30" + WEATHER;
    private static final Path FOLDER = Path.of("practice");
    private static final String FILE = "practice.csv";
    private static final ArrivalTime AT = new ArrivalTime(0, 0);

    private final List<MeasuredPull.Curve> ended = new ArrayList<>();

    private PracticeDay() {}

    /** Goes through it on a thread of its own. */
    static void runBeside(LiveSession.Setup setup) {
        Thread thread = new Thread(() -> tryRun(setup), "live-practice");
        thread.setDaemon(true);
        thread.start();
    }

    private static void tryRun(LiveSession.Setup setup) {
        try {
            run(setup);
        } catch (RuntimeException fault) {
            // the session has lost nothing but the time that this was to save
            Logger.debug(fault, "the practice day was not gone through");
        }
    }

    /** Its pulls, under the plan of a session. */
    static List<MeasuredPull.Curve> run(LiveSession.Setup setup) {
        LiveSession.Setup own = new LiveSession.Setup(
                setup.plan(),
                new LiveIntake.Folder(FolderSettings.usual(FOLDER)),
                setup.claim(),
                setup.experience(),
                Keeper.none(),
                setup.opener(),
                setup.clock());
        PracticeDay practice = new PracticeDay();
        LiveDay day = new LiveDay(own, AT, new AdviceDesk(Runnable::run, Keeper.none()), practice);
        String source = FOLDER.toString();
        String log = log(setup.plan());
        MessageDigest digest = Fingerprint.digest();
        digest.update(log.getBytes(StandardCharsets.UTF_8));
        Fingerprint print = Fingerprint.of(log.length(), digest);
        day.accept(new Arrival.FromFile(source, AT, FILE, 0));
        day.accept(Chunk.of(source, AT, log));
        day.accept(new Arrival.FileComplete(source, AT, FILE, Arrival.Taken.NEW, print));
        day.takeAnswers();
        return List.copyOf(practice.ended);
    }

    private static String log(SweepPlan plan) {
        SpeedBand band = plan.band().map(Band::speeds).orElse(USUAL);
        StringBuilder rows = new StringBuilder(
                "Time [s],Engine speed [rpm],Torque [N.m],Throttle [%],Lambda,Spark advance [deg],"
                        + "Knock count,Exhaust temp [degC],Coolant temp [degC],Air temp [degC],Baro [kPa],Humidity [%]\n");
        int row = 0;
        for (int advanceDeg : ADVANCES_DEG) {
            double lowest = band.fromRpm() - BESIDE_RPM;
            for (int idle = 0; idle < IDLE_ROWS; idle++) {
                row = add(rows, row, lowest, IDLE);
            }
            for (double rpm = lowest; rpm < band.toRpm() + BESIDE_RPM; rpm += RPM_A_ROW) {
                row = add(rows, row, rpm, torque(advanceDeg) + ",100,0.880," + advanceDeg + WEATHER);
            }
        }
        for (int idle = 0; idle < IDLE_ROWS; idle++) {
            row = add(rows, row, band.fromRpm(), IDLE);
        }
        return rows.toString();
    }

    /** Falls on both sides of 24 degrees, so that a peak is found. */
    private static int torque(int advanceDeg) {
        int away = advanceDeg - 24;
        return 180 - away * away / 12;
    }

    private static int add(StringBuilder rows, int row, double rpm, String rest) {
        rows.append(String.format(Locale.ROOT, "%.2f,%.0f,%s\n", row * STEP_S, rpm, rest));
        return row + 1;
    }

    @Override
    public void pullEnded(MeasuredPull.Curve pull) {
        ended.add(pull);
    }

    @Override
    public void alarm(Alarm.Event event) {}

    @Override
    public void said(LiveState.Notice notice) {}

    @Override
    public void pullFound() {}

    @Override
    public void acted(OperatorAction act) {}

    @Override
    public void changed() {}
}
