package org.nextpull.simulator;

import org.nextpull.plan.SweepPlan;

/**
 * What a day on the model engine is to be.
 *
 * @param plan plan that describes engine, dyno and sweep
 * @param seed where all chance comes from
 * @param dialect how the log is written
 */
public record EngineDayOrder(SweepPlan plan, long seed, LogDialect dialect) {}
