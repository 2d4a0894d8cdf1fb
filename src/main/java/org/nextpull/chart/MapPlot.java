package org.nextpull.chart;

import java.util.List;
import java.util.Optional;

/**
 * The data of a chart of spark advance over speed, for an ignition that holds a map. Points are speed in rpm and advance in degrees.
 *
 * @param tried what each pull that counts ran, in the order of the day
 * @param chosen the map that stays if the day ends now; empty while there is none
 * @param next the map to set next; empty at the end
 * @param interval 90 % interval of the best advance by speed; empty where it is known nowhere
 * @param nearTop from the least advance near enough to the peak up to the peak; empty where it is known nowhere
 * @param nearTopPercent how much torque that gives away at most, in percent
 * @param knock the most advance that knock leaves, by speed
 * @param most the plan's most advance in degrees
 */
public record MapPlot(
        List<List<Point>> tried,
        List<Point> chosen,
        List<Point> next,
        Optional<DrawnBand> interval,
        Optional<DrawnBand> nearTop,
        double nearTopPercent,
        List<Point> knock,
        double most) {
    public MapPlot {
        tried = tried.stream().map(List::copyOf).toList();
        chosen = List.copyOf(chosen);
        next = List.copyOf(next);
        knock = List.copyOf(knock);
    }
}
