package org.nextpull.response;

import org.nextpull.plan.Limit;

/**
 * A limit that a pull met.
 *
 * @param limit which
 * @param worst worst value, beyond the limit, in the project's unit of the limit's quantity ({@code Quantity.si})
 * @param allowed the plan's limit, in the same unit
 */
public record LimitMet(Limit limit, double worst, double allowed) {}
