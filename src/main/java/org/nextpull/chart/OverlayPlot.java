package org.nextpull.chart;

import java.util.List;
import java.util.Optional;

/**
 * The data of a chart of mean curves over speed, one a configuration.
 *
 * @param title what it shows
 * @param yTitle figure and unit
 * @param curves the curves, the reference first
 */
public record OverlayPlot(String title, String yTitle, List<Curve> curves) {
    public OverlayPlot {
        curves = List.copyOf(curves);
    }

    /**
     * One configuration.
     *
     * @param name its label
     * @param mean mean over its pulls, over speed in rpm
     * @param band interval of that mean; empty where it rests on one pull
     */
    public record Curve(String name, List<Point> mean, Optional<DrawnBand> band) {
        public Curve {
            mean = List.copyOf(mean);
        }
    }
}
