package org.nextpull.pull;

import java.util.ArrayList;
import java.util.List;
import org.nextpull.math.Series;

/** Finds where the speed is held: it stays within 0.75 % (at least 15 rpm) to both sides for long enough and does not creep. */
record Plateaus(SpeedTrace trace) {
    private static final double TOLERANCE_SHARE = 0.0075;
    private static final double TOLERANCE_RPM = 15;

    /** The plateaus of at least that length, in order of time. */
    List<SpeedTrace.Points> ofAtLeast(double seconds) {
        List<SpeedTrace.Points> found = new ArrayList<>();
        int point = 0;
        while (point < trace.size()) {
            point = next(point, seconds, found);
        }
        return found;
    }

    /** Looks for the next plateau from a point on, and says where to go on. */
    private int next(int from, double seconds, List<SpeedTrace.Points> found) {
        Extremes lowest = new Extremes(-1);
        Extremes highest = new Extremes(1);
        int first = from;
        boolean longEnough = false;
        for (int point = from; point < trace.size(); point++) {
            lowest.add(point);
            highest.add(point);
            while (trace.smoothRpm(highest.first()) - trace.smoothRpm(lowest.first())
                    > 2 * tolerance(trace.smoothRpm(first))) {
                if (longEnough) {
                    add(first, point - 1, seconds, found);
                    return point;
                }
                lowest.leave(first);
                highest.leave(first);
                first++;
            }
            longEnough = longEnough || trace.durationS(first, point) >= seconds;
        }
        if (longEnough) {
            add(first, trace.size() - 1, seconds, found);
        }
        return trace.size();
    }

    /** The point of the highest speed, or the lowest where the sign is negative, of a window that moves on: and those that follow it so. */
    private final class Extremes {
        private final int sign;
        private final int[] points = new int[trace.size()];
        private int begin;
        private int end;

        Extremes(int sign) {
            this.sign = sign;
        }

        void add(int point) {
            while (end > begin && sign * trace.smoothRpm(points[end - 1]) <= sign * trace.smoothRpm(point)) {
                end--;
            }
            points[end++] = point;
        }

        int first() {
            return points[begin];
        }

        /** The window moves on over a point. */
        void leave(int point) {
            if (points[begin] == point) {
                begin++;
            }
        }
    }

    private void add(int first, int last, double seconds, List<SpeedTrace.Points> found) {
        double tolerance = tolerance(trace.smoothRpm(first));
        int third = (last - first) / 3;
        double early = median(first, first + third);
        double late = median(last - third, last);
        double creep = 1.5 * Math.abs(late - early) / trace.durationS(first, last) * seconds;
        if (creep <= tolerance) {
            found.add(withoutApproach(first, last, median(first, last), tolerance / 2));
        }
    }

    /** Leaves the ends out where the speed still comes or already goes. */
    private SpeedTrace.Points withoutApproach(int from, int to, double rpm, double tolerance) {
        int first = from;
        int last = to;
        while (first < last && Math.abs(trace.smoothRpm(first) - rpm) > tolerance) {
            first++;
        }
        while (last > first && Math.abs(trace.smoothRpm(last) - rpm) > tolerance) {
            last--;
        }
        return new SpeedTrace.Points(first, last);
    }

    private double median(int first, int last) {
        return Series.generate(last - first + 1, index -> trace.smoothRpm(first + index))
                .median();
    }

    private static double tolerance(double rpm) {
        return Math.max(TOLERANCE_RPM, TOLERANCE_SHARE * Math.abs(rpm));
    }
}
