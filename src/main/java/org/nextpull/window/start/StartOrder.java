package org.nextpull.window.start;

import java.util.Optional;
import org.nextpull.live.LiveIntake;
import org.nextpull.plan.SweepPlan;

/**
 * A session that is to begin.
 *
 * @param plan its plan
 * @param planFile where the plan lies; empty for one that was not written
 * @param planText the plan as text
 * @param intake where the values come from; nobody reads from there any more
 */
public record StartOrder(SweepPlan plan, Optional<String> planFile, String planText, LiveIntake intake) {}
