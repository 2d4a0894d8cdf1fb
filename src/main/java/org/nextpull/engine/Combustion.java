package org.nextpull.engine;

import org.nextpull.engine.cycle.BurnDuration;

/**
 * How an engine burns.
 *
 * @param duration burn duration
 * @param spread standard deviation of lambda within the cylinder
 * @param completeness fraction of the heat that is released; crevices and leaks keep the rest
 * @param hotSpot where it begins to knock
 */
public record Combustion(BurnDuration duration, double spread, double completeness, HotSpot hotSpot) {
    /**
     * The hottest part of the charge, in which knock begins: deposits, the exhaust valve, residual gas that is not mixed in.
     *
     * @param hotterK how much warmer than the mean it is when the inlet closes, in K. Its usual size is the project's own choice, so
     *     that 11:1 on pump fuel begins to knock near best torque at low speed (common practice, no source)
     */
    public record HotSpot(double hotterK) {
        public static final HotSpot USUAL = new HotSpot(22);
    }
}
