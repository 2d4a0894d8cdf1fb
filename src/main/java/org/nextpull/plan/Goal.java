package org.nextpull.plan;

import org.nextpull.finding.WrittenId;

/**
 * What is looked for and when it is enough, table {@code [goal]}.
 *
 * @param response the figure of a pull that is fitted
 * @param nearBestPercent how far below the peak the least advance and the mixture edges may lie, in percent
 * @param worthPercent the smallest difference that matters in a comparison, in percent
 * @param maxPulls most pulls of the day
 * @param learnFromNotebook whether earlier sessions may teach the planner
 */
public record Goal(
        Response response, double nearBestPercent, double worthPercent, int maxPulls, boolean learnFromNotebook) {

    /** The figure of a pull that is fitted. */
    public enum Response implements WrittenId {
        TORQUE,
        POWER
    }

    public static Goal defaults() {
        return new Goal(Response.TORQUE, 0.2, 1.0, 25, true);
    }
}
