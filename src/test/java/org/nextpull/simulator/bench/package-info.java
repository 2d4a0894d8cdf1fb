/**
 * A seeded bench of physical engines that judges the planner of one sweep beside the trade's rule. All engines are invented.
 */
@NullMarked
package org.nextpull.simulator.bench;

import org.jspecify.annotations.NullMarked;
