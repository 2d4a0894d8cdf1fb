package org.nextpull.alarm;

import org.nextpull.plan.Limit;
import org.nextpull.unit.Quantity;
import org.nextpull.unit.Temperature;

/**
 * How near a limit is.
 *
 * @param limit the limit
 * @param value the worst reading of the moment, in the project's unit of the limit's quantity
 * @param allowed the plan's limit, in the same unit
 */
public record Headroom(Limit limit, double value, double allowed) {
    /** How much of the way to the limit is used, 1 at the limit, dimensionless; temperatures count from the freezing point. */
    public double used() {
        double zero = limit.quantity() == Quantity.TEMPERATURE
                ? Temperature.ofCelsius(0).kelvins()
                : 0;
        double share = limit.isLeast() ? allowed / value : (value - zero) / (allowed - zero);
        return Double.isFinite(share) ? Math.max(0, share) : 0;
    }
}
