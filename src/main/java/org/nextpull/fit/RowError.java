package org.nextpull.fit;

/**
 * What one reading is off by, beside its pull, percent.
 *
 * @param sweep of a row of a sweep of speed
 * @param held of a plateau at a held speed
 */
record RowError(double sweep, double held) {
    /** Before the pulls say more; one row is the mean of a band, over which single speeds even out. */
    static RowError usual(SpeedRows rows) {
        return new RowError(rows.size() == 1 ? 0.05 : 0.20, 0.11);
    }

    double of(boolean isHeld) {
        return isHeld ? held : sweep;
    }
}
