package org.nextpull.engine.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** Drives a program: part throttle, opening, the pull itself, closing. One moment for each row of the log to be. */
final class Driver {
    private static final double BEFORE_S = 1.6;
    private static final double OPENING_S = 0.25;
    private static final double SETTLING_S = 0.8;
    private static final double CLOSING_S = 0.2;
    private static final double AFTER_S = 1.6;
    private static final double PART_THROTTLE = 0.22;
    static final double FALL_RPM_PER_S = 700;
    private static final double RAMP_BETWEEN_STEPS_RPM_PER_S = 500;
    private static final double RPM_PER_RADIAN = 30 / Math.PI;
    private static final int SUBSTEPS = 8;
    private static final double MOST_RUN_S = 120;

    private final double interval;
    private final List<Moment> moments = new ArrayList<>();
    private double time;
    private int stage;

    private Driver(double sampleHz) {
        this.interval = 1 / sampleHz;
    }

    /**
     * All moments of a pull.
     *
     * @param program what is driven
     * @param sampleHz rows a second
     * @param brake what the engine works against
     * @param torque full-load torque in N.m over engine speed in rpm
     * @param fromRpm speed at which the engine runs before
     */
    static List<Moment> drive(
            Brake.Program program, double sampleHz, Brake brake, DoubleUnaryOperator torque, double fromRpm) {
        Driver driver = new Driver(sampleHz);
        double start = program.range().low();
        driver.approach(fromRpm, start);
        driver.hold(start, BEFORE_S, PART_THROTTLE);
        driver.open(start);
        if (program instanceof Brake.Program.Acceleration acceleration) {
            driver.hold(start, SETTLING_S, 1);
            driver.ramp(start, program.range().high(), acceleration.rpmPerSecond());
        } else if (program instanceof Brake.Program.Steps steps) {
            driver.plateaus(steps);
        } else if (program instanceof Brake.Program.SparkSteps steps) {
            driver.sparkSteps(steps);
        } else {
            Brake.Roller roller =
                    brake.roller().orElseThrow(() -> new IllegalArgumentException("a roller run needs a roller"));
            driver.rollUp(program, brake, roller, torque);
        }
        driver.close();
        return List.copyOf(driver.moments);
    }

    /** To a speed at part throttle, or with the throttle closed where it is lower. */
    private void approach(double from, double to) {
        double step = FALL_RPM_PER_S * interval;
        boolean up = from < to;
        for (double rpm = from; up ? rpm < to : rpm > to; rpm += up ? step : -step) {
            add(rpm, up ? FALL_RPM_PER_S : -FALL_RPM_PER_S, up ? PART_THROTTLE : 0);
        }
    }

    private double rpm() {
        return moments.get(moments.size() - 1).motion().rpm();
    }

    private void add(double rpm, double rpmPerSecond, double throttle) {
        moments.add(new Moment(time, new Moment.Motion(rpm, rpmPerSecond), throttle, stage));
        time += interval;
    }

    private void hold(double rpm, double seconds, double throttle) {
        long rows = Math.round(seconds / interval);
        for (long row = 0; row < rows; row++) {
            add(rpm, 0, throttle);
        }
    }

    private void open(double rpm) {
        long rows = Math.round(OPENING_S / interval);
        for (long row = 1; row <= rows; row++) {
            add(rpm, 0, PART_THROTTLE + (1 - PART_THROTTLE) * row / rows);
        }
    }

    private void ramp(double from, double to, double rate) {
        double rpm = from;
        while (rpm < to) {
            add(rpm, rate, 1);
            rpm += rate * interval;
        }
    }

    private void plateaus(Brake.Program.Steps steps) {
        double rpm = steps.range().low();
        hold(rpm, steps.holdS(), 1);
        while (rpm + steps.stepRpm() <= steps.range().high() + 1e-6) {
            ramp(rpm, rpm + steps.stepRpm(), RAMP_BETWEEN_STEPS_RPM_PER_S);
            rpm += steps.stepRpm();
            hold(rpm, steps.holdS(), 1);
        }
    }

    private void sparkSteps(Brake.Program.SparkSteps steps) {
        for (int step = 0; step < steps.advances().size(); step++) {
            stage = step;
            hold(steps.rpm(), steps.holdS(), 1);
        }
    }

    /** Torque less losses at the roller speeds up the roller and the engine's own inertia. */
    private void rollUp(Brake.Program program, Brake brake, Brake.Roller roller, DoubleUnaryOperator torque) {
        double ratio = roller.engineRevPerRollerRev();
        double inertia = roller.inertia() + brake.engineInertia() * ratio * ratio;
        double rpm = program.range().low();
        double end = time + MOST_RUN_S;
        while (rpm < program.range().high() && time < end) {
            double rate = 0;
            double begun = rpm;
            for (int sub = 0; sub < SUBSTEPS; sub++) {
                double atRoller =
                        torque.applyAsDouble(rpm) * ratio * (1 - roller.losses().share())
                                - roller.losses().dragAt(rpm / ratio);
                rate = atRoller / inertia * RPM_PER_RADIAN * ratio;
                rpm += rate * interval / SUBSTEPS;
            }
            add(begun, rate, 1);
        }
    }

    private void close() {
        double rpm = rpm();
        long closing = Math.round(CLOSING_S / interval);
        long rows = closing + Math.round(AFTER_S / interval);
        for (long row = 1; row <= rows; row++) {
            rpm = Math.max(1000, rpm - FALL_RPM_PER_S * interval);
            add(rpm, -FALL_RPM_PER_S, Math.max(0, 1 - (double) row / closing));
        }
    }

    /**
     * The engine at an instant of a pull, before any sensor.
     *
     * @param timeS time from the start of the pull's recording
     * @param motion speed and its change
     * @param throttle opening, 0 to 1
     * @param stage which of the pull's settings holds, from 0
     */
    record Moment(double timeS, Motion motion, double throttle, int stage) {
        /**
         * Speed of the engine and its change.
         *
         * @param rpm speed
         * @param rpmPerSecond change
         */
        record Motion(double rpm, double rpmPerSecond) {}
    }
}
