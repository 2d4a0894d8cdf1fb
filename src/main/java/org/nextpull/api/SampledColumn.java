package org.nextpull.api;

import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.unit.Unit;

/**
 * What a column of a log holds.
 *
 * @param channel what it means, and which sensor where there are several
 * @param unit unit of its values
 */
public record SampledColumn(Channel channel, Unit unit) {
    /**
     * A column of numbers.
     *
     * @throws IllegalArgumentException where the unit does not measure what the role is, or the role is one of words or an air-fuel
     *     ratio, which has to be given as lambda
     */
    public SampledColumn {
        Role role = channel.role();
        if (role.isText() || role == Role.AIR_FUEL_RATIO || role.quantity() != unit.quantity()) {
            throw new IllegalArgumentException(channel.id() + " in " + unit.symbol());
        }
    }

    /** The first, and mostly only, sensor of a role. */
    public static SampledColumn of(Role role, Unit unit) {
        return new SampledColumn(Channel.of(role), unit);
    }
}
