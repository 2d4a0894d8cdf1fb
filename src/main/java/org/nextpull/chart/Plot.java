package org.nextpull.chart;

import java.util.List;
import java.util.stream.Stream;

/** The data of a chart; what is drawn is this and nothing else. */
public sealed interface Plot permits SweepPlot, MapPlot, SpeedPlot, OverlayPlot, DifferencePlot {
    /** The chart in that size and look. */
    ChartFrame frame(ChartSize size, ChartLook look);

    /**
     * An interval drawn along a curve.
     *
     * @param low its lower edge
     * @param high its upper edge, at the same places
     */
    record Band(List<Point> low, List<Point> high) {
        public Band {
            low = List.copyOf(low);
            high = List.copyOf(high);
        }

        /** The points of both edges. */
        List<Point> points() {
            return Stream.concat(low.stream(), high.stream()).toList();
        }
    }
}
