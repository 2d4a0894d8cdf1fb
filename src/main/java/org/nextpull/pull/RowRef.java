package org.nextpull.pull;

import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;

/** One row of some samples that has a time, in s. */
record RowRef(Samples samples, int row, double timeS) {
    static final Channel TIME = Channel.of(Role.TIME);
}
