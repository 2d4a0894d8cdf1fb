package org.nextpull.engine.bench;

/**
 * The engine at an instant of a pull, before any sensor.
 *
 * @param timeS time from the start of the pull's recording
 * @param motion speed and its change
 * @param throttle opening, 0 to 1
 * @param stage which of the pull's settings holds, from 0
 */
record BenchMoment(double timeS, Motion motion, double throttle, int stage) {
    /**
     * Speed of the engine and its change.
     *
     * @param rpm speed
     * @param rpmPerSecond change
     */
    record Motion(double rpm, double rpmPerSecond) {}
}
