package org.nextpull.engine.cycle;

/** Watches a cycle for its highest pressure and for the onset of autoignition. */
final class Peak {
    private double lastDeg;
    private double last;
    private double beforeDeg;
    private double before;
    private PeakPressure best = new PeakPressure(0, 0);
    private double lastBurned;
    private double lastIntegral;
    private double unburnedAtOnset;

    void see(double deg, double pascals) {
        if (last >= before && last > pascals && last > best.pascals()) {
            best = vertex(deg, pascals);
        }
        beforeDeg = lastDeg;
        before = last;
        lastDeg = deg;
        last = pascals;
    }

    void seeKnock(double burned, double integral) {
        if (integral >= 1 && lastIntegral < 1) {
            double share = (1 - lastIntegral) / (integral - lastIntegral);
            unburnedAtOnset = 1 - lastBurned - share * (burned - lastBurned);
        }
        lastBurned = burned;
        lastIntegral = integral;
    }

    PeakPressure pressure() {
        return best.pascals() > last ? best : new PeakPressure(last, lastDeg);
    }

    /** Fraction of the charge that was not burned when the end gas lit itself; 0 when it never did. */
    double unburnedAtOnset() {
        return unburnedAtOnset;
    }

    /** Top of the parabola through three neighbours. */
    private PeakPressure vertex(double deg, double pascals) {
        double left = lastDeg - beforeDeg;
        double right = deg - lastDeg;
        double slopeLeft = (last - before) / left;
        double slopeRight = (pascals - last) / right;
        double bend = (slopeRight - slopeLeft) / (left + right);
        double slope = (slopeLeft * right + slopeRight * left) / (left + right);
        if (bend >= 0) {
            return new PeakPressure(last, lastDeg);
        }
        return new PeakPressure(last - slope * slope / (4 * bend), lastDeg - slope / (2 * bend));
    }
}
