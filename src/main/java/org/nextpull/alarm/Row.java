package org.nextpull.alarm;

import java.util.List;
import java.util.OptionalDouble;
import org.nextpull.channel.Role;

/** One row of samples. */
record Row(BlockView view, int index) {

    /** The first sensor of a role. */
    OptionalDouble find(Role role) {
        for (BlockView.Sensor sensor : sensors(role)) {
            if (sensor.channel().sensor() == 1) {
                return sensor.find(index);
            }
        }
        return OptionalDouble.empty();
    }

    OptionalDouble find(BlockView.Sensor sensor) {
        return sensor.find(index);
    }

    List<BlockView.Sensor> sensors(Role role) {
        return view.sensors(role);
    }

    RowPlace moment() {
        return new RowPlace(view.line(index), find(Role.TIME));
    }
}
