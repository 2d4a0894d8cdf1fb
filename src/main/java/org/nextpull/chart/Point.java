package org.nextpull.chart;

/** A point of a chart, in the units of its axes. */
public record Point(double x, double y) {}
