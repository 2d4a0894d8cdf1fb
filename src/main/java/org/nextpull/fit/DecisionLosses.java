package org.nextpull.fit;

/** The cost of settings under a posterior. */
public final class DecisionLosses {
    /** Losses above this share count as bad. */
    public static final double BAD = 0.005;

    /** Price of one step of setting above the least one that is as good: keeps the verdict to the retarded, richer side. */
    private static final double PRICE_OF_EXCESS = 0.0005;

    private final SweepPosterior posterior;
    private final CellTable cells;

    public DecisionLosses(SweepPosterior posterior) {
        this.posterior = posterior;
        this.cells = posterior.cells();
    }

    /** The cost of one setting. */
    public SettingLoss at(double setting) {
        double decision = 0;
        double plain = 0;
        double belowPeak = 0;
        double bad = 0;
        for (int c = 0; c < cells.count; c++) {
            double loss = loss(c, setting);
            decision += cells.weight[c] * decisionLoss(c, setting, loss);
            plain += cells.weight[c] * loss;
            belowPeak += cells.weight[c] * (1 - ratio(c, setting));
            bad += loss > BAD ? cells.weight[c] : 0;
        }
        return new SettingLoss(setting, decision, plain, belowPeak, Math.min(1, bad));
    }

    /** The setting of least expected decision loss; the ladder must not be empty. */
    public SettingLoss recommended(Ladder ladder) {
        return least(ladder, false);
    }

    /** The setting of least expected loss of response; the ladder must not be empty. */
    public SettingLoss mostResponse(Ladder ladder) {
        return least(ladder, true);
    }

    private SettingLoss least(Ladder ladder, boolean plain) {
        if (ladder.count() == 0) {
            throw new IllegalArgumentException("no setting within " + ladder);
        }
        SettingLoss best = at(ladder.setting(0));
        for (int i = 1; i < ladder.count(); i++) {
            SettingLoss next = at(ladder.setting(i));
            if (plain ? next.loss() < best.loss() : next.decisionLoss() < best.decisionLoss()) {
                best = next;
            }
        }
        return best;
    }

    private double loss(int cell, double setting) {
        return 1 - ratio(cell, setting) / posterior.bestRatio(cell);
    }

    /** Response at a setting relative to the peak. */
    private double ratio(int cell, double setting) {
        return PeakShape.heldRatio(setting - cells.peak[cell], cells.curvature[cell], cells.asymmetry[cell]);
    }

    private double decisionLoss(int cell, double setting, double loss) {
        return Math.max(0, loss - posterior.sweep().permitted().nearBest())
                + PRICE_OF_EXCESS * Math.max(0, setting - posterior.least(cell));
    }

    /** Decision loss of each ladder setting in each cell, the setting outermost. */
    double[][] table(Ladder ladder) {
        double[][] table = new double[ladder.count()][cells.count];
        for (int i = 0; i < table.length; i++) {
            double setting = ladder.setting(i);
            for (int c = 0; c < cells.count; c++) {
                table[i][c] = decisionLoss(c, setting, loss(c, setting));
            }
        }
        return table;
    }
}
