package org.nextpull.response;

import java.util.Optional;
import org.nextpull.curve.CorrectedCurve;

/**
 * A pull with its corrected curve.
 *
 * @param pull the pull
 * @param curve its curve; empty for a row of a table and for a pull that gave none
 */
public record MeasuredCurve(MeasuredPull pull, Optional<CorrectedCurve> curve) {}
