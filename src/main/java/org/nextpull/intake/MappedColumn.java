package org.nextpull.intake;

import java.util.Optional;
import org.nextpull.channel.Channel;
import org.nextpull.unit.Unit;

/**
 * A column that is read.
 *
 * @param index its place in the row, from 0
 * @param header as written
 * @param channel what it means
 * @param unit unit that its cells are in; empty for words and for times of a clock
 * @param divisor what a value in the project's unit is divided by: the scale of an air-fuel gauge, else 1
 * @param reading how its cells become values
 */
public record MappedColumn(
        int index, String header, Channel channel, Optional<Unit> unit, double divisor, Reading reading) {
    /** How cells become values. */
    public enum Reading {
        AS_IT_STANDS,
        /** The pressure of the air is added. */
        ABOVE_AIR,
        /** Each row counts what was added to the total since the row before. */
        RUNNING_TOTAL
    }

    /** Whether an engine can have a value as it is written in a cell; if not, it is a sensor's fault code or a broken line. */
    public boolean isPossible(double written) {
        return possible().holds(toSi(written));
    }

    /** The values that it can have, in the project's unit. */
    ExpectedValues.ValueRange possible() {
        return reading == Reading.ABOVE_AIR
                ? ExpectedValues.ValueRange.ANY
                : ExpectedValues.possible(channel.role()).orElse(ExpectedValues.ValueRange.ANY);
    }

    /** A number of a cell in the project's unit, and on no gauge's scale. */
    public double toSi(double written) {
        return (unit.isPresent() ? unit.get().toSi(written) : written) / divisor;
    }

    /** The same of the first of many cells, where they stand. */
    void toSi(double[] written, int count) {
        if (unit.isPresent()) {
            Unit from = unit.get();
            for (int row = 0; row < count; row++) {
                written[row] = from.toSi(written[row]);
            }
        }
        if (divisor != 1) {
            for (int row = 0; row < count; row++) {
                written[row] /= divisor;
            }
        }
    }
}
