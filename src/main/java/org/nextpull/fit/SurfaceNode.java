package org.nextpull.fit;

/**
 * A node of the grid over what enters the surface other than nearly linearly.
 *
 * @param curvature percent of torque lost per degree squared
 * @param scatter scale of what whole pulls are off by, percent
 * @param isWide whether under the wide prior of the map
 * @param logPrior natural log of its weight before the data, up to a constant
 */
record SurfaceNode(double curvature, double scatter, boolean isWide, double logPrior) {}
