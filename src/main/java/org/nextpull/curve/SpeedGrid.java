package org.nextpull.curve;

import java.util.stream.LongStream;
import org.nextpull.unit.SpeedBand;

/**
 * An even grid of speeds at the multiples of its step, so that curves of different pulls fall on the same points.
 *
 * @param stepRpm distance of neighbouring points in rpm, positive
 */
record SpeedGrid(int stepRpm) {
    /** The grid of every curve. */
    static final SpeedGrid STANDARD = new SpeedGrid(25);

    private static final double EDGE = 1e-6;

    /**
     * Accepts any step from 1 rpm up.
     *
     * @throws IllegalArgumentException for a step of 0 or less
     */
    SpeedGrid {
        if (stepRpm < 1) {
            throw new IllegalArgumentException("a grid has a positive step: " + stepRpm);
        }
    }

    /** The points in a band in rpm, rising, its ends included; none where the band is narrower than a step and holds none. */
    double[] pointsIn(SpeedBand band) {
        long first = (long) Math.ceil(band.fromRpm() / stepRpm - EDGE);
        long last = (long) Math.floor(band.toRpm() / stepRpm + EDGE);
        return LongStream.rangeClosed(first, last)
                .mapToDouble(index -> (double) index * stepRpm)
                .toArray();
    }
}
