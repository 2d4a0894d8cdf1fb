package org.nextpull.fit;

/**
 * How high a setting may go and how near to the best is as good as the best.
 *
 * @param highest highest setting that may be left in the engine: plan limit or what knock leaves
 * @param nearBest share of the best permitted response that may be given away, 0.002 for 0.2 %
 */
public record Permitted(double highest, double nearBest) {
    public Permitted {
        if (!Double.isFinite(highest) || !(nearBest > 0) || nearBest >= 0.2) {
            throw new IllegalArgumentException("highest " + highest + ", near best " + nearBest);
        }
    }

    public Permitted withHighest(double newHighest) {
        return new Permitted(newHighest, nearBest);
    }
}
