package org.nextpull.unit;

/**
 * A range of shaft speed.
 *
 * @param fromRpm lower end in rpm, not negative
 * @param toRpm upper end in rpm, above the lower
 */
public record SpeedBand(double fromRpm, double toRpm) {
    public SpeedBand {
        Finite.require("lower end of a speed band", fromRpm);
        Finite.require("upper end of a speed band", toRpm);
        if (fromRpm < 0 || toRpm <= fromRpm) {
            throw new IllegalArgumentException("not a speed band: " + fromRpm + " to " + toRpm + " rpm");
        }
    }

    public double widthRpm() {
        return toRpm - fromRpm;
    }

    public boolean contains(double rpm) {
        return rpm >= fromRpm && rpm <= toRpm;
    }
}
