package org.nextpull.engine.bench;

import java.util.ArrayDeque;
import java.util.Deque;

/** What the sensors of a running engine have in them: it lasts from one pull to the next. Written by {@link Sensors} alone. */
final class SensorState {
    static final double PART_LOAD_LAMBDA = 1.0;
    static final double PART_LOAD_EXHAUST_K = 870;

    private static final double OIL_RISE_K_PER_S = 0.25;
    private static final double COOLANT_RISE_K_PER_S = 0.15;

    final Deque<Double> lambdas = new ArrayDeque<>();
    final Warming oil = new Warming(OIL_RISE_K_PER_S);
    final Warming coolant = new Warming(COOLANT_RISE_K_PER_S);
    double load;
    double mixture = PART_LOAD_LAMBDA;
    double exhaust = PART_LOAD_EXHAUST_K;
    long line = 1;

    /** An engine that runs at part throttle. */
    SensorState(double load) {
        this.load = load;
    }

    /** How far a fluid is above the temperature that it settles at between pulls. */
    static final class Warming {
        private static final double COOLING_S = 40;

        private final double risePerS;
        private double kelvins;

        private Warming(double risePerS) {
            this.risePerS = risePerS;
        }

        double above() {
            return kelvins;
        }

        void follow(boolean fullLoad, double seconds) {
            kelvins += fullLoad ? risePerS * seconds : kelvins * Math.expm1(-seconds / COOLING_S);
        }

        /** The temperature that it settles at has moved, the fluid has not. */
        void settlesHigherBy(double change) {
            kelvins -= change;
        }
    }
}
