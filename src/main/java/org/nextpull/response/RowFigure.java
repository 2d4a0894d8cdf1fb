package org.nextpull.response;

import java.util.Optional;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Torque;

/**
 * One row of a pull.
 *
 * @param rpm speed of the row in rpm: a multiple of the distance between rows, or the speed that was held
 * @param torque corrected torque there
 * @param advance spark advance that was run there; empty where it is not known
 */
public record RowFigure(double rpm, Torque torque, Optional<Advance> advance) {}
