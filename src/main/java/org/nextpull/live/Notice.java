package org.nextpull.live;

import org.nextpull.finding.Finding;
import org.nextpull.intake.wire.ArrivalTime;

/**
 * Something that was said while the session ran.
 *
 * @param at when
 * @param finding what
 */
public record Notice(ArrivalTime at, Finding finding) {}
