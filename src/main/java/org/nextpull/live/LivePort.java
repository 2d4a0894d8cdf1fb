package org.nextpull.live;

import org.nextpull.intake.serial.WireSettings;
import org.nextpull.intake.wire.LineSettings;

/**
 * A port that a session reads.
 *
 * @param wire how the port is set
 * @param lines what its lines are
 */
public record LivePort(WireSettings wire, LineSettings lines) {}
