package org.nextpull.pull;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.OptionalDouble;
import org.nextpull.channel.Samples;

/**
 * Full load by the speed alone, for an inertia roller whose log has neither throttle nor torque: the speed of the last half second
 * rises by more than a fiftieth of itself a second.
 */
final class RisingGate implements LoadGate {
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
            double time = samples.value(RowRef.TIME, row);
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
