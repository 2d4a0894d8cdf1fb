package org.nextpull.alarm;

import java.util.List;
import java.util.OptionalDouble;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;

/** One row of samples. */
record Row(BlockView view, int index, RowPlace moment) {
    static Row of(BlockView view, int index) {
        return new Row(
                view,
                index,
                new RowPlace(view.samples().line(index), view.samples().find(Role.TIME, index)));
    }

    /** The first sensor of a role. */
    OptionalDouble find(Role role) {
        return view.samples().find(role, index);
    }

    OptionalDouble find(Channel sensor) {
        return view.samples().find(sensor, index);
    }

    List<Channel> sensors(Role role) {
        return view.sensors(role);
    }
}
