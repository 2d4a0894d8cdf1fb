package org.nextpull.advice;

import java.util.Optional;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/**
 * A setting to run, or to leave in the engine. Rounded to the plan's resolution toward retard and rich.
 *
 * @param advance flat spark advance; empty when the plan sets offsets or has no timing
 * @param offset degrees to add everywhere to the present map; empty when the plan sets flat advance
 * @param lambda mixture; empty when the plan has none
 */
public record Proposal(Optional<Advance> advance, Optional<Advance> offset, Optional<Lambda> lambda) {}
