package org.nextpull.advice;

import java.util.OptionalDouble;
import org.nextpull.unit.Span;

/**
 * What a sweep's pulls say so far, in the units of its factor (degrees, or lambda).
 *
 * @param pulls pulls in the sweep that count
 * @param mostDaring most advanced, or leanest, clean setting run so far
 * @param peak where the peak may lie, 5 to 95 %
 * @param chanceBracketed probability that the peak lies on the near side of the most daring clean setting, 0 to 1
 * @param stake what stopping now would leave
 * @param lastStepPercent change of the response over the last step between neighbouring settings, where there is one
 * @param scatterPercent scatter from pull to pull that the fit works with
 */
public record Evidence(
        int pulls,
        double mostDaring,
        Span peak,
        double chanceBracketed,
        Stake stake,
        OptionalDouble lastStepPercent,
        double scatterPercent) {

    /**
     * What is at stake in stopping now.
     *
     * @param leftPercent torque that is expected to be left at the best setting known now, in percent of the best that knock and the
     *     plan permit
     * @param belowPeakPercent the same in percent of the peak; only where that is bracketed
     * @param chanceOfMuchLeft probability that it leaves more than half a percent, 0 to 1
     */
    public record Stake(double leftPercent, OptionalDouble belowPeakPercent, double chanceOfMuchLeft) {}
}
