package org.nextpull.bench;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;

/**
 * Writes a log of any length: an invented engine that is run up through its band once in a while, 14 channels at 100 Hz. The same seed
 * writes the same bytes.
 */
final class LongLog {
    private static final String HEADER =
            "Time [s],Engine speed [rpm],Torque [N.m],Throttle [%],Lambda,Spark advance [deg],Knock count,"
                    + "Exhaust temp [degC],Coolant temp [degC],Oil temp [degC],Oil pressure [kPa],Inlet air temp [degC],Baro [kPa],Humidity [%]\n";
    private static final int HZ = 100;
    private static final int PULL_ROWS = 10 * HZ;
    private static final double FROM_RPM = 2500;
    private static final double TO_RPM = 6500;
    private static final double BEST_DEG = 29;

    private final Random random = new Random(15);
    private final byte[] line = new byte[200];
    private final int rowsApart;
    private int length;

    /** A log whose pulls begin so many seconds apart. */
    LongLog(int secondsApart) {
        this.rowsApart = secondsApart * HZ;
    }

    /** Writes pulls until the log has so many bytes and so many pulls; the number of pulls. */
    int write(Path file, long leastBytes, int leastPulls) throws IOException {
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file), 1 << 16)) {
            byte[] header = HEADER.getBytes(StandardCharsets.US_ASCII);
            out.write(header);
            long written = header.length;
            int pulls = 0;
            while (written < leastBytes || pulls < leastPulls) {
                double advance = 20 + 2 * random.nextInt(6);
                for (int row = 0; row < rowsApart; row++) {
                    row((long) pulls * rowsApart + row, row - (rowsApart - PULL_ROWS) / 2, advance);
                    out.write(line, 0, length);
                    written += length;
                }
                pulls++;
            }
            return pulls;
        }
    }

    /** One row; {@code into} rows into the pull, which lasts {@link #PULL_ROWS}. */
    private void row(long index, int into, double advance) {
        boolean loaded = into >= 0 && into < PULL_ROWS;
        double share = (double) into / PULL_ROWS;
        double rpm = loaded ? FROM_RPM + share * (TO_RPM - FROM_RPM) : 1800;
        double speed = (rpm - 4500) / 4000;
        double torque = 195 * (1 - 0.5 * speed * speed) * (1 - 0.0006 * (advance - BEST_DEG) * (advance - BEST_DEG));
        length = 0;
        put(index * 10, 3);
        put(Math.round(rpm + random.nextInt(7) - 3), 0);
        put(Math.round(10 * (loaded ? torque + random.nextGaussian() : 4)), 1);
        put(loaded ? 998 + random.nextInt(3) : 150 + random.nextInt(5), 1);
        put((loaded ? 870 : 1000) + random.nextInt(5), 3);
        put(Math.round(10 * advance), 1);
        put(0, 0);
        put((loaded ? 700 + Math.round(100 * share) : 600) + random.nextInt(3), 0);
        put(860 + random.nextInt(5), 1);
        put(910 + random.nextInt(5), 1);
        put(410 + random.nextInt(9), 0);
        put(190 + random.nextInt(3), 1);
        put(9840 + random.nextInt(3), 2);
        put(545 + random.nextInt(3), 1);
        line[length - 1] = '\n';
    }

    /** A whole number with so many of its digits behind the point, and a comma. */
    private void put(long number, int decimals) {
        String digits = Long.toString(number);
        for (int at = Math.min(0, digits.length() - decimals - 1); at < digits.length(); at++) {
            if (decimals > 0 && at == digits.length() - decimals) {
                line[length++] = '.';
            }
            line[length++] = (byte) (at < 0 ? '0' : digits.charAt(at));
        }
        line[length++] = ',';
    }
}
