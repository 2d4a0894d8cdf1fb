package org.nextpull.chart;

/** The data of a chart; what is drawn is this and nothing else. */
public sealed interface Plot permits SweepPlot, MapPlot, SpeedPlot, OverlayPlot, DifferencePlot {
    /** The chart in that size and look. */
    ChartFrame frame(ChartSize size, ChartLook look);
}
