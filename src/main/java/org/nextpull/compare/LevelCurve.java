package org.nextpull.compare;

import java.util.List;

/**
 * The mean curve of a label over speed.
 *
 * @param label the label
 * @param rows ascending in speed
 */
public record LevelCurve(String label, List<Row> rows) {
    public LevelCurve {
        rows = List.copyOf(rows);
    }

    /** The curve at one speed, in 1/min. */
    public record Row(double rpm, Level level) {}

    /**
     * A level in the unit of the pulls, as it would be in mid-day: drift and warm-up taken out.
     *
     * @param value the level
     * @param halfWidth half width of its simultaneous 95 % band, which holds at all speeds of this label together. Two bands that
     *     overlap do not show that labels are alike: the difference has a narrower interval of its own
     */
    public record Level(double value, double halfWidth) {
        /** Lower end of the band, in the unit of the pulls. */
        public double low() {
            return value - halfWidth;
        }

        /** Upper end of the band, in the unit of the pulls. */
        public double high() {
            return value + halfWidth;
        }
    }
}
