package org.nextpull.response;

/** Highest graded knock level around a speed in rpm, in the scale of the log. */
public record LevelAtSpeed(double rpm, double level) {}
