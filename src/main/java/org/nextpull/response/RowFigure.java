package org.nextpull.response;

import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Torque;

/**
 * One row of a pull.
 *
 * @param rpm speed of the row in rpm: a multiple of the distance between rows, or the speed that was held
 * @param torque corrected torque there
 * @param advance spark advance that was run there; empty where it is not known
 * @param lambda mixture that was measured there by the first sensor that lives; empty where none does
 * @param heldAtS middle of the plateau on the clock of the log, s; empty where the speed was swept
 */
public record RowFigure(
        double rpm, Torque torque, Optional<Advance> advance, Optional<Lambda> lambda, OptionalDouble heldAtS) {
    /** A row of a sweep at a mixture that is not known by speed. */
    public RowFigure(double rpm, Torque torque, Optional<Advance> advance) {
        this(rpm, torque, advance, Optional.empty(), OptionalDouble.empty());
    }

    /** The same with the advance that stood there. */
    public RowFigure withAdvance(Optional<Advance> stood) {
        return new RowFigure(rpm, torque, stood, lambda, heldAtS);
    }

    /** The same at another speed. */
    public RowFigure atRpm(double other) {
        return new RowFigure(other, torque, advance, lambda, heldAtS);
    }
}
