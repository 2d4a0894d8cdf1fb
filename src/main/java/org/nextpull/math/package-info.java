/**
 * Numbers without an engine word: arrays, distributions, quantiles, robust location and scale. Below it {@code math.regression}
 * (least squares and what is read off it). Imports no other room; the only place that sees Commons Math and Commons Statistics, whose types do not leave it.
 */
@NullMarked
package org.nextpull.math;

import org.jspecify.annotations.NullMarked;
