package org.nextpull.plan;

import org.nextpull.unit.Lambda;

/**
 * How lean the leanest sensor may read at full load.
 *
 * @param leanest the leanest mixture allowed
 * @param forS how long it may be passed before it counts, in s
 */
public record LeanLimit(Lambda leanest, double forS) {
    public static final double FOR_S = 0.3;
}
