package org.nextpull.compare;

import org.nextpull.scatter.Scatter;

/**
 * Pull-to-pull scatter of one label, after drift.
 *
 * @param pulls how many pulls it has
 */
public record LabelScatter(String label, int pulls, Scatter scatter) {}
