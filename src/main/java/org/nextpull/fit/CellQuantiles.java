package org.nextpull.fit;

/**
 * Distribution of a quantity over weighted cells that stand about one grid step apart: each cell is spread evenly over a little
 * more than a step, so that quantiles do not jump from node to node.
 */
final class CellQuantiles {
    private static final int BINS_A_STEP = 50;

    private final double first;
    private final double binWidth;
    private final double[] cumulated;

    private CellQuantiles(double first, double binWidth, double[] cumulated) {
        this.first = first;
        this.binWidth = binWidth;
        this.cumulated = cumulated;
    }

    /** Nodes one step apart, each standing for its own step; weights sum to 1. */
    static CellQuantiles ofNodes(double[] nodes, double[] weights, double step) {
        double[] cumulated = new double[nodes.length + 1];
        for (int i = 0; i < nodes.length; i++) {
            cumulated[i + 1] = cumulated[i] + weights[i];
        }
        return new CellQuantiles(nodes[0] - step / 2, step, cumulated);
    }

    /** Values in no order, each spread over 1.2 steps; weights run in parallel and sum to 1. */
    static CellQuantiles ofCells(double[] values, double[] weights, double step) {
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        for (double value : values) {
            lowest = Math.min(lowest, value);
            highest = Math.max(highest, value);
        }
        double width = step / BINS_A_STEP;
        int spread = BINS_A_STEP * 6 / 5;
        int bins = (int) Math.ceil((highest - lowest) / width) + spread + 1;
        double[] cumulated = new double[bins + 1];
        for (int c = 0; c < values.length; c++) {
            int bin = (int) Math.round((values[c] - lowest) / width);
            cumulated[bin + 1] += weights[c] / spread;
            if (bin + 1 + spread <= bins) {
                cumulated[bin + 1 + spread] -= weights[c] / spread;
            }
        }
        for (int pass = 0; pass < 2; pass++) {
            for (int bin = 1; bin <= bins; bin++) {
                cumulated[bin] += cumulated[bin - 1];
            }
        }
        return new CellQuantiles(lowest - width * spread / 2, width, cumulated);
    }

    double at(double probability) {
        double wanted = probability * cumulated[cumulated.length - 1];
        int bin = 1;
        while (bin < cumulated.length - 1 && cumulated[bin] < wanted) {
            bin++;
        }
        double mass = cumulated[bin] - cumulated[bin - 1];
        double share = mass > 0 ? (wanted - cumulated[bin - 1]) / mass : 0.5;
        return first + (bin - 1 + share) * binWidth;
    }

    double below(double value) {
        double place = (value - first) / binWidth;
        if (place <= 0) {
            return 0;
        }
        int bin = (int) place;
        int last = cumulated.length - 1;
        if (bin >= last) {
            return 1;
        }
        double within = cumulated[bin] + (place - bin) * (cumulated[bin + 1] - cumulated[bin]);
        return Math.min(1, within / cumulated[last]);
    }
}
