package org.nextpull.response;

import java.util.List;
import java.util.Optional;
import org.nextpull.alarm.Alarm;
import org.nextpull.curve.CorrectedCurve;

/**
 * A pull with its corrected curve and the alarms that sounded in it.
 *
 * @param pull the pull
 * @param curve its curve; empty for a row of a table and for a pull that gave none
 * @param alarms alarms of the pull, by their first row
 */
public record MeasuredCurve(MeasuredPull pull, Optional<CorrectedCurve> curve, List<Alarm> alarms) {
    public MeasuredCurve {
        alarms = List.copyOf(alarms);
    }

    public MeasuredCurve withPull(MeasuredPull newPull) {
        return newPull == pull ? this : new MeasuredCurve(newPull, curve, alarms);
    }
}
