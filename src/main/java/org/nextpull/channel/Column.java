package org.nextpull.channel;

import java.util.Optional;
import org.nextpull.unit.Unit;

/**
 * How a column of the source was understood.
 *
 * @param header its header as written
 * @param channel what it means; empty when the tool has no use for it
 * @param unit the unit that it was written in; empty for words and unused columns
 */
public record Column(String header, Optional<Channel> channel, Optional<Unit> unit) {}
