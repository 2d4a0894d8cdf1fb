package examples;

import java.io.PrintStream;
import java.nio.ByteBuffer;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.nextpull.api.DayAnswer;
import org.nextpull.api.LoggedDay;
import org.nextpull.api.SampledColumn;
import org.nextpull.api.SampledLog;
import org.nextpull.channel.Role;
import org.nextpull.unit.Torque;
import org.nextpull.unit.Unit;

/** Reads a logger of one's own, here one that writes records of eight bytes. The numbers are invented. */
public final class OwnLogger {
    private static final int RECORD_BYTES = 8;
    private static final String PLAN = """
            [engine]
            name = "invented two-litre"
            displacement_l = 2.0
            [dyno]
            kind = "engine-brake"
            torque_at = "crank"
            inertia_in_log = true
            [air]
            standard = "none"
            [band]
            from_rpm = 3000
            to_rpm = 6000
            [timing]
            sets = "flat"
            start_deg = 20
            least_deg = 14
            most_deg = 36
            largest_step_deg = 2
            """;

    private OwnLogger() {}

    /** A pull as the logger stores it: hundredths of a second, rpm, tenths of lbf.ft, tenths of a degree. */
    static ByteBuffer record(int advanceDeg) {
        ByteBuffer bytes = ByteBuffer.allocate(RECORD_BYTES * 500);
        for (int row = 0; row < 500; row++) {
            int rpm = 2500 + 8 * row;
            double torque = 140 - 0.03 * (28 - advanceDeg) * (28 - advanceDeg) - 2e-6 * (rpm - 4500) * (rpm - 4500);
            bytes.putShort((short) (2 * row)).putShort((short) rpm);
            bytes.putShort((short) Math.round(10 * torque)).putShort((short) (10 * advanceDeg));
        }
        return bytes.flip();
    }

    /** The rows of such a pull. */
    static Stream<double[]> rows(ByteBuffer bytes) {
        return IntStream.range(0, bytes.limit() / RECORD_BYTES)
                .map(row -> RECORD_BYTES * row)
                .mapToObj(at -> new double[] {
                    bytes.getShort(at) / 100.0,
                    bytes.getShort(at + 2),
                    bytes.getShort(at + 4) / 10.0,
                    bytes.getShort(at + 6) / 10.0
                });
    }

    /** Writes what two pulls come to. */
    public static void show(PrintStream out) {
        List<SampledColumn> columns = List.of(
                SampledColumn.of(Role.TIME, Unit.SECOND),
                SampledColumn.of(Role.ENGINE_SPEED, Unit.RPM),
                SampledColumn.of(Role.TORQUE, Unit.POUND_FOOT),
                SampledColumn.of(Role.ADVANCE, Unit.DEGREE));
        LoggedDay day = LoggedDay.ofPlan(PLAN).value().orElseThrow();
        for (int advanceDeg : new int[] {20, 22}) {
            ByteBuffer bytes = record(advanceDeg);
            day = day.withLog(SampledLog.of("pull at " + advanceDeg + " deg", columns, () -> rows(bytes)));
        }

        DayAnswer answer = day.answer();
        for (DayAnswer.Pull pull : answer.pulls()) {
            double newtonMetres = pull.torque().map(Torque::newtonMetres).orElseThrow();
            out.printf("%s: %.1f N.m%n", pull.source(), newtonMetres);
        }
        DayAnswer.Next next = answer.next().orElseThrow();
        out.println(next.action().id() + ", because " + next.code().id());
    }
}
