package org.nextpull.channel;

/**
 * One column of samples: its role and, since an engine may carry several lambda or exhaust sensors, which of them it is.
 *
 * @param role what it means
 * @param sensor number of the sensor of that role, from 1
 */
public record Channel(Role role, int sensor) {
    /**
     * Accepts a sensor of any number from 1.
     *
     * @throws IllegalArgumentException when the number is 0 or negative
     */
    public Channel {
        if (sensor < 1) {
            throw new IllegalArgumentException("sensors are numbered from 1: " + sensor);
        }
    }

    /** The first, and mostly only, sensor of a role. */
    public static Channel of(Role role) {
        return new Channel(role, 1);
    }

    /** Written out, as the hash is: channels are looked for from the first row on, and Java takes long to make what a record compares by. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Channel channel && role == channel.role && sensor == channel.sensor;
    }

    @Override
    public int hashCode() {
        return 31 * role.hashCode() + sensor;
    }

    /** The channel as JSON writes it: {@code lambda}, and {@code lambda_2} for the second sensor. */
    public String id() {
        return sensor == 1 ? role.id() : role.id() + "_" + sensor;
    }
}
