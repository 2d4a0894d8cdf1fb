package org.nextpull.pull;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.channel.Block;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.plan.DynoFacts;

/** Tells row by row whether the engine is at full load. */
interface LoadGate {
    /** Looks at the next row. */
    boolean isLoaded(Samples samples, int row);

    /** Forgets what came before: another run begins. */
    void restart();

    /**
     * Full load by torque where no throttle is logged: at least half of what the log reaches. That is known from a survey of the whole log,
     * or else the highest torque so far is taken, with single rows smoothed out.
     */
    static final class EffortGate implements LoadGate {
        private static final double SHARE = 0.5;
        private static final int SMOOTHED_ROWS = 5;

        private final LoadSignal effort;
        private final boolean surveyed;
        private final double[] recent = new double[SMOOTHED_ROWS];
        private double reference;
        private int seen;
        private boolean open;

        EffortGate(LoadSignal effort, Optional<Level> level) {
            this.effort = effort;
            this.surveyed = level.isPresent();
            this.reference = level.map(Level::newtonMetres).orElse(0.0);
        }

        @Override
        public boolean isLoaded(Samples samples, int row) {
            OptionalDouble torque = effort.newtonMetres(samples, row);
            if (torque.isPresent()) {
                if (!surveyed) {
                    follow(torque.getAsDouble());
                }
                open = reference > 0 && torque.getAsDouble() >= SHARE * reference;
            }
            return open;
        }

        private void follow(double torque) {
            recent[seen++ % SMOOTHED_ROWS] = torque;
            if (seen >= SMOOTHED_ROWS) {
                double[] sorted = recent.clone();
                Arrays.sort(sorted);
                reference = Math.max(reference, sorted[SMOOTHED_ROWS / 2]);
            }
        }

        @Override
        public void restart() {
            open = false;
        }
    }

    /**
     * Full load by the speed alone, for an inertia roller whose log has neither throttle nor torque: the speed of the last half second
     * rises by more than a fiftieth of itself a second.
     */
    static final class RisingGate implements LoadGate {
        private static final double WINDOW_S = 0.5;
        private static final double LEAST_SHARE_A_SECOND = 0.02;
        private static final int LEAST_ROWS = 3;
        private static final int MOST_ROWS = 200;

        private final SpeedSource speed;
        private final Deque<double[]> window = new ArrayDeque<>();
        private boolean open;

        RisingGate(SpeedSource speed) {
            this.speed = speed;
        }

        @Override
        public boolean isLoaded(Samples samples, int row) {
            OptionalDouble rpm = speed.rpm(samples, row);
            if (rpm.isPresent()) {
                double time = samples.value(TimedChannel.TIME, row);
                window.addLast(new double[] {time, rpm.getAsDouble()});
                while (window.size() > LEAST_ROWS
                        && (window.size() > MOST_ROWS || time - window.getFirst()[0] > WINDOW_S)) {
                    window.removeFirst();
                }
                open = window.size() >= LEAST_ROWS && rises();
            }
            return open;
        }

        private boolean rises() {
            double meanTime = 0;
            double meanRpm = 0;
            for (double[] point : window) {
                meanTime += point[0] / window.size();
                meanRpm += point[1] / window.size();
            }
            double product = 0;
            double square = 0;
            for (double[] point : window) {
                product += (point[0] - meanTime) * (point[1] - meanRpm);
                square += (point[0] - meanTime) * (point[0] - meanTime);
            }
            return square > 0 && meanRpm > 0 && product / square > LEAST_SHARE_A_SECOND * meanRpm;
        }

        @Override
        public void restart() {
            window.clear();
            open = false;
        }
    }

    /** Full load by the throttle. Once open the gate forgives a little, so that a noisy sensor does not chop a pull. */
    static final class ThrottleGate implements LoadGate {
        static final Channel THROTTLE = Channel.of(Role.THROTTLE);
        private static final double FORGIVEN = 0.02;

        private final double fullLoad;
        private boolean open;
        private double highest = Double.NEGATIVE_INFINITY;

        ThrottleGate(double fullLoad) {
            this.fullLoad = fullLoad;
        }

        @Override
        public boolean isLoaded(Samples samples, int row) {
            if (samples.isPresent(THROTTLE, row)) {
                double throttle = samples.value(THROTTLE, row);
                highest = Math.max(highest, throttle);
                open = throttle >= (open ? fullLoad - FORGIVEN : fullLoad);
            }
            return open;
        }

        @Override
        public void restart() {
            open = false;
        }

        /** The first row from there on, at the latest an end, at which it opens or closes. */
        int steadyUntil(Samples samples, int first, int end) {
            Samples.Cells cells = samples.cells(THROTTLE);
            int row = first;
            while (row < end
                    && (!cells.isPresent(row) || open == cells.value(row) >= (open ? fullLoad - FORGIVEN : fullLoad))) {
                row++;
            }
            return row;
        }

        /** Takes rows in which it is steady. */
        void pass(Samples samples, int first, int end) {
            Samples.Cells cells = samples.cells(THROTTLE);
            for (int row = first; row < end; row++) {
                highest = cells.isPresent(row) ? Math.max(highest, cells.value(row)) : highest;
            }
        }

        boolean isOpen() {
            return open;
        }

        /** The highest throttle so far; minus infinity where there was none. */
        double highest() {
            return highest;
        }
    }

    /**
     * The torque that a whole log reaches at its best, single rows aside.
     *
     * @param newtonMetres torque in N.m, positive
     */
    record Level(double newtonMetres) {
        /**
         * Accepts any positive finite torque.
         *
         * @throws IllegalArgumentException when it is NaN, infinite, 0 or negative
         */
        public Level {
            if (!(newtonMetres > 0 && newtonMetres < Double.MAX_VALUE)) {
                throw new IllegalArgumentException("a load level is positive: " + newtonMetres);
            }
        }
    }

    /**
     * A first look over a log without a throttle: how much torque does it reach? Keeps a histogram of one percent steps, so a log of any
     * length takes the same memory and the order of its blocks does not matter.
     */
    static final class Survey {
        private static final double LEAST_NM = 0.01;
        private static final double STEP = 1.01;
        private static final int BINS = 1700;

        /** Rows at the top that may be faults of the sensor: one in two thousand, at least five. */
        private static final double FAULTS = 0.0005;

        private static final int LEAST_FAULTS = 5;

        private final DynoFacts.Gearing gearing;
        private final long[] counts = new long[BINS];
        private long rows;

        /** Looks at logs whose speed may have to come from the roller. */
        public Survey(DynoFacts.Gearing gearing) {
            this.gearing = gearing;
        }

        /** Takes the next block in. */
        public void accept(Block block) {
            Samples samples = block.samples();
            SpeedSource.of(samples, gearing)
                    .flatMap(speed -> LoadSignal.of(samples, speed))
                    .ifPresent(effort -> {
                        for (int row = 0; row < samples.rows(); row++) {
                            count(effort.newtonMetres(samples, row));
                        }
                    });
        }

        private void count(OptionalDouble torque) {
            if (torque.isPresent() && torque.getAsDouble() > LEAST_NM) {
                int bin = (int) (Math.log(torque.getAsDouble() / LEAST_NM) / Math.log(STEP));
                counts[Math.min(bin, BINS - 1)]++;
                rows++;
            }
        }

        /** The level that was reached; empty when no torque was positive. */
        public Optional<LoadGate.Level> level() {
            if (rows == 0) {
                return Optional.empty();
            }
            long above = Math.min(rows / 10, Math.max(LEAST_FAULTS, (long) (FAULTS * rows)));
            int bin = BINS - 1;
            long passed = 0;
            while (bin > 0 && passed + counts[bin] <= above) {
                passed += counts[bin--];
            }
            return Optional.of(new LoadGate.Level(LEAST_NM * Math.pow(STEP, bin + 0.5)));
        }
    }
}
