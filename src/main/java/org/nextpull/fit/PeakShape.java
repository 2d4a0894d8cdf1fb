package org.nextpull.fit;

/**
 * The shape of a response about its peak: 1 - k x^2 (1 - g x/10), x the distance from the peak. With g above 0 it falls off faster
 * on the low side.
 */
final class PeakShape {
    /** Below this share of the peak the polynomial says nothing any more; losses are held there. */
    static final double LEAST_RATIO = 0.05;

    /** Newton steps of the least setting go no further below the peak than this. */
    private static final double FURTHEST = -30;

    private PeakShape() {}

    /** Relative loss at a distance x from the peak. */
    static double loss(double x, double k, double g) {
        return k * x * x * (1 - g * x / 10);
    }

    /** Response at x relative to the peak, held above zero. */
    static double heldRatio(double x, double k, double g) {
        return Math.max(LEAST_RATIO, 1 - loss(x, k, g));
    }

    /** Response at the best permitted setting relative to the peak, {@code room} being highest permitted minus peak. */
    static double bestRatio(double room, double k, double g) {
        return Math.min(1, heldRatio(Math.max(FURTHEST, Math.min(room, 0)), k, g));
    }

    /** Distance (not above 0) at which the response has fallen to (1 - nearBest) of {@code bestRatio}. */
    static double leastDistance(double k, double g, Fall fall) {
        double target = 1 - (1 - fall.nearBest()) * fall.bestRatio();
        double x = Math.max(FURTHEST, -Math.sqrt(target / k));
        for (int step = 0; step < 4; step++) {
            double slope = k * x * (2 - 0.3 * g * x);
            if (!(slope < 0)) {
                break;
            }
            x = Math.max(FURTHEST, Math.min(0, x - (loss(x, k, g) - target) / slope));
        }
        return x;
    }

    /** How far the response may fall: to (1 - nearBest) of a best that is itself {@code bestRatio} of the peak. */
    record Fall(double bestRatio, double nearBest) {}
}
