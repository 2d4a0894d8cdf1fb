package org.nextpull.fit;

import java.util.List;
import java.util.Optional;

/** The readings of a surface as plain arrays, and what depends on nothing else: each row's mean taken off, shapes of a pull's errors. */
final class ReadingTable {
    /** Effects of one pull: level, three waves over speed, and warming while a speed is held. */
    static final int EFFECTS = 5;
    /** Effects of a pull that sweeps the speed: all but the last. */
    static final int SWEEP_EFFECTS = 4;

    private static final double SECONDS_A_UNIT = 30;

    final SpeedRows rows;
    final int rowCount;
    final int pullCount;
    final int count;
    /** First reading of each pull, and one past the last. */
    final int[] start;

    final int[] day;
    final double[] order;
    final boolean[] held;
    final int[] row;
    final double[] advance;
    final double[] hundredths;
    final double[] percent;
    /** Effects at each reading, {@link #EFFECTS} apart. */
    final double[] basis;

    ReadingTable(Surface surface) {
        rows = surface.rows();
        List<SurfacePull> pulls = surface.pulls();
        rowCount = rows.size();
        pullCount = pulls.size();
        count = surface.readings();
        start = new int[pullCount + 1];
        day = new int[pullCount];
        order = new double[pullCount];
        held = new boolean[pullCount];
        row = new int[count];
        advance = new double[count];
        hundredths = new double[count];
        percent = new double[count];
        basis = new double[count * EFFECTS];
        for (int i = 0; i < pullCount; i++) {
            fill(i, pulls.get(i), surface.priors().mixture());
        }
        takeOffRowMeans();
    }

    private void fill(int i, SurfacePull pull, Optional<MixturePrior> mixture) {
        day[i] = pull.day();
        order[i] = pull.order();
        held[i] = pull.isHeld();
        double middle = pull.readings().stream()
                .mapToDouble(SurfacePull.Reading::heldS)
                .average()
                .orElse(0);
        int k = start[i];
        for (SurfacePull.Reading reading : pull.readings()) {
            row[k] = reading.row();
            advance[k] = reading.advance().deg();
            percent[k] = reading.lnTorquePercent();
            hundredths[k] = mixture.flatMap(prior -> reading.lambda().map(prior::hundredths))
                    .orElse(0.0);
            basis[k * EFFECTS] = 1;
            for (int j = 1; j < SWEEP_EFFECTS; j++) {
                basis[k * EFFECTS + j] = rows.hasShapes() ? rows.wave(j, row[k]) : 0;
            }
            basis[k * EFFECTS + SWEEP_EFFECTS] = held[i] ? (reading.heldS() - middle) / SECONDS_A_UNIT : 0;
            k++;
        }
        start[i + 1] = k;
    }

    private void takeOffRowMeans() {
        double[] sum = new double[rowCount];
        int[] readings = new int[rowCount];
        for (int k = 0; k < count; k++) {
            sum[row[k]] += percent[k];
            readings[row[k]]++;
        }
        for (int k = 0; k < count; k++) {
            percent[k] -= sum[row[k]] / readings[row[k]];
        }
    }

    int effects(int pull) {
        return held[pull] ? EFFECTS : SWEEP_EFFECTS;
    }

    /** Readings of pulls that hold a speed, or of those that sweep it. */
    int readings(boolean ofHeld) {
        int sum = 0;
        for (int i = 0; i < pullCount; i++) {
            sum += held[i] == ofHeld ? start[i + 1] - start[i] : 0;
        }
        return sum;
    }

    /** Pulls that hold a speed, or sweep it, and have a reading. */
    int pulls(boolean ofHeld) {
        int sum = 0;
        for (int i = 0; i < pullCount; i++) {
            sum += held[i] == ofHeld && start[i + 1] > start[i] ? 1 : 0;
        }
        return sum;
    }
}
