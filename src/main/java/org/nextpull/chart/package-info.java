/**
 * Results as pictures, for window, report and command line alike; XChart is seen only here. No statistics. Imports the result rooms
 * and {@code session}.
 */
@NullMarked
package org.nextpull.chart;

import org.jspecify.annotations.NullMarked;
