package org.nextpull.alarm;

import java.util.OptionalDouble;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;

/** One row of samples. */
record Row(Samples samples, int index) {

    OptionalDouble find(Channel channel) {
        return samples.find(channel, index);
    }

    /** The first sensor of a role. */
    OptionalDouble find(Role role) {
        return find(Channel.of(role));
    }

    Moment moment() {
        return new Moment(samples.line(index), find(Role.TIME));
    }
}
