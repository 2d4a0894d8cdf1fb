package org.nextpull.plan;

import org.nextpull.unit.SpeedBand;

/**
 * The speed range that the answer is for, table {@code [band]}.
 *
 * @param speeds engine speeds
 * @param rowsEveryRpm distance of the rows of the result table in rpm
 */
public record Band(SpeedBand speeds, int rowsEveryRpm) {
    public static final int ROWS_EVERY_RPM = 250;

    public Band {
        if (rowsEveryRpm < 1) {
            throw new IllegalArgumentException("no distance of rows: " + rowsEveryRpm + " rpm");
        }
    }

    /** Lowest engine speed in rpm. */
    public double fromRpm() {
        return speeds.fromRpm();
    }

    /** Highest engine speed in rpm. */
    public double toRpm() {
        return speeds.toRpm();
    }

    public boolean contains(double rpm) {
        return speeds.contains(rpm);
    }
}
