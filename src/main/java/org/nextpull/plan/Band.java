package org.nextpull.plan;

/**
 * The speed range that the answer is for, table {@code [band]}.
 *
 * @param fromRpm lowest engine speed in rpm
 * @param toRpm highest engine speed in rpm
 * @param rowsEveryRpm distance of the rows of the result table in rpm
 */
public record Band(double fromRpm, double toRpm, int rowsEveryRpm) {
    public static final int ROWS_EVERY_RPM = 250;

    public Band {
        if (!(fromRpm > 0 && fromRpm < toRpm) || rowsEveryRpm < 1) {
            throw new IllegalArgumentException("no band: " + fromRpm + " to " + toRpm + " rpm by " + rowsEveryRpm);
        }
    }

    public boolean contains(double rpm) {
        return rpm >= fromRpm && rpm <= toRpm;
    }
}
