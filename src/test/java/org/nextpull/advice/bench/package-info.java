/**
 * A seeded bench of simple engines that judges the planner beside the trade's rule. All engines are invented.
 */
@NullMarked
package org.nextpull.advice.bench;

import org.jspecify.annotations.NullMarked;
