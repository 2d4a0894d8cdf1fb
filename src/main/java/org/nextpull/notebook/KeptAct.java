package org.nextpull.notebook;

import java.time.Instant;
import org.nextpull.session.OperatorAction;

/**
 * Something that the operator did by hand.
 *
 * @param at when
 * @param pulls how many pulls there were then
 * @param act what
 */
public record KeptAct(Instant at, int pulls, OperatorAction act) {}
