package org.nextpull.response;

import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/**
 * Knock in one row of a log.
 *
 * @param rpm speed; empty where the row has none
 * @param advance spark advance that was logged there
 * @param lambda mixture that was logged there, that of the leanest sensor
 * @param events events counted there, one where a level was above its limit; positive
 */
public record KnockAt(OptionalDouble rpm, Optional<Advance> advance, Optional<Lambda> lambda, double events) {}
