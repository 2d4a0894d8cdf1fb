package org.nextpull.simulator;

import java.util.List;
import org.nextpull.channel.Role;

/** What the logger of an engine brake writes. */
final class BrakeLog {
    static final List<Role> ROLES = List.of(
            Role.TIME,
            Role.ENGINE_SPEED,
            Role.TORQUE,
            Role.THROTTLE,
            Role.LAMBDA,
            Role.ADVANCE,
            Role.KNOCK_EVENTS,
            Role.EXHAUST_TEMPERATURE,
            Role.COOLANT_TEMPERATURE,
            Role.OIL_TEMPERATURE,
            Role.OIL_PRESSURE,
            Role.FUEL_PRESSURE,
            Role.INLET_AIR_TEMPERATURE,
            Role.BAROMETER,
            Role.HUMIDITY);

    private BrakeLog() {}
}
