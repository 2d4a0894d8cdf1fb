package org.nextpull.unit;

/**
 * A range of shaft speed.
 *
 * @param fromRpm lower end in rpm, not negative
 * @param toRpm upper end in rpm, above the lower
 */
public record SpeedBand(double fromRpm, double toRpm) {
    /**
     * Accepts two finite speeds, of which the upper one is truly higher.
     *
     * @throws IllegalArgumentException for NaN or an infinite speed, for a lower end below 0, and when the upper end is not above the
     *     lower one
     */
    public SpeedBand {
        Finite.require("lower end of a speed band", fromRpm);
        Finite.require("upper end of a speed band", toRpm);
        if (fromRpm < 0 || toRpm <= fromRpm) {
            throw new IllegalArgumentException("not a speed band: " + fromRpm + " to " + toRpm + " rpm");
        }
    }

    /** Upper less lower end in rpm, above 0. */
    public double widthRpm() {
        return toRpm - fromRpm;
    }

    /** Whether a speed in rpm lies in the band, whose ends belong to it; NaN never does. */
    public boolean contains(double rpm) {
        return rpm >= fromRpm && rpm <= toRpm;
    }
}
