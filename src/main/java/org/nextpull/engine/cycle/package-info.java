/**
 * One closed cycle of a spark-ignition cylinder, crank angle by crank angle, and the correlations that it is built of. Imports
 * {@code engine.gas} and {@code math}.
 */
@NullMarked
package org.nextpull.engine.cycle;

import org.jspecify.annotations.NullMarked;
