package org.nextpull.engine.bench;

import java.util.List;
import org.nextpull.channel.Role;

/**
 * What is logged, how often and how badly.
 *
 * @param sampleHz rows a second
 * @param roles what is logged, in the order of the columns
 * @param lambda the wideband sensor
 * @param torque standard deviation of the torque reading, as a fraction
 * @param speed standard deviation of the speed reading in rpm
 * @param imperfections the rest
 */
public record Instruments(
        double sampleHz, List<Role> roles, Wideband lambda, double torque, double speed, Imperfections imperfections) {
    /**
     * The wideband sensor.
     *
     * @param delayS time from the cylinder to the reading
     * @param noise standard deviation of the reading
     */
    public record Wideband(double delayS, double noise) {}

    /**
     * The rest.
     *
     * @param thermocoupleS time constant of the exhaust thermocouple in s
     * @param dropped fraction of rows that are lost
     */
    public record Imperfections(double thermocoupleS, double dropped) {}

    public Instruments {
        roles = List.copyOf(roles);
    }

    /** Usual instruments: 0.25 s of lambda delay, 0.4 % of torque noise, 3 rpm, 1.5 s thermocouple, one row in 500 lost. */
    public static Instruments usual(double sampleHz, List<Role> roles) {
        return new Instruments(sampleHz, roles, new Wideband(0.25, 0.003), 0.004, 3, new Imperfections(1.5, 0.002));
    }

    public Instruments withLambdaDelay(double seconds) {
        return new Instruments(sampleHz, roles, new Wideband(seconds, lambda.noise()), torque, speed, imperfections);
    }

    public Instruments withSpeedNoise(double rpm) {
        return new Instruments(sampleHz, roles, lambda, torque, rpm, imperfections);
    }

    public Instruments logging(List<Role> others) {
        return new Instruments(sampleHz, others, lambda, torque, speed, imperfections);
    }

    public boolean logs(Role role) {
        return roles.contains(role);
    }
}
