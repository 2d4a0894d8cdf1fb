package org.nextpull.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.nextpull.channel.SparkMap;
import org.nextpull.unit.Advance;

/**
 * The cells that an ignition holds, and the rows that each of them feeds. Makes a map of what is wanted at the rows and what is allowed
 * at rows and cells, rounded toward retard. A flat ignition is a grid of one cell that feeds every row.
 */
final class SettingGrid {
    private static final int RAISING_PASSES = 2;

    private final double[] rows;
    private final SparkMap present;
    private final SparkGrid values;
    private final double[] cells;
    /** Share of each cell in each row. */
    private final double[][] share;

    /**
     * @param present map that stands in the engine; its breakpoints are the cells, and those that feed no row and lie outside them keep its values
     *     where no limit forbids them
     */
    SettingGrid(double[] rows, SparkMap present, double resolutionDeg) {
        this.rows = rows.clone();
        this.present = present;
        values = new SparkGrid(present.isFlat() ? present.degAt(0) : 0, resolutionDeg);
        cells = present.cells().stream().mapToDouble(SparkMap.Cell::rpm).toArray();
        share = new double[cells.length][rows.length];
        for (int c = 0; c < cells.length; c++) {
            double[] unit = new double[cells.length];
            unit[c] = 1;
            share[c] = SparkMap.of(cells, unit).degAt(rows);
        }
    }

    boolean isFlat() {
        return present.isFlat();
    }

    /** What a map that was run was set to: the nearest that the cells can hold. */
    SparkMap set(SparkMap run) {
        return values.near(
                isFlat() ? SparkMap.flat(Advance.ofDeg(run.degAt(0))) : SparkMap.of(cells, run.degAt(cells)));
    }

    /**
     * The map nearest to what is wanted that no limit forbids.
     *
     * @param wanted degrees at each row
     * @param limit most degrees at a speed in rpm, asked for rows and cells
     */
    SparkMap map(double[] wanted, DoubleUnaryOperator limit) {
        SparkMap wish = isFlat() ? SparkMap.flat(Advance.ofDeg(wanted[0])) : SparkMap.of(rows, wanted);
        double[] rowLimit = new double[rows.length];
        for (int r = 0; r < rows.length; r++) {
            rowLimit[r] = limit.applyAsDouble(rows[r]);
        }
        double[] most = new double[cells.length];
        double[] value = new double[cells.length];
        for (int c = 0; c < cells.length; c++) {
            most[c] = isFlat() ? wish.degAt(0) : Math.min(wish.degAt(cells[c]), limit.applyAsDouble(cells[c]));
            value[c] = most[c];
            for (int r = 0; r < rows.length; r++) {
                value[c] = share[c][r] > 0 ? Math.min(value[c], rowLimit[r]) : value[c];
            }
        }
        for (int pass = 0; pass < RAISING_PASSES; pass++) {
            for (int c = 0; c < cells.length; c++) {
                value[c] = Math.max(value[c], Math.min(most[c], room(c, value, rowLimit)));
            }
        }
        List<SparkMap.Cell> made = new ArrayList<>();
        for (int c = 0; c < cells.length; c++) {
            double stands = present.cells().get(c).advance().deg();
            double limited = feeds(c) || isBetweenRows(c) ? value[c] : Math.min(stands, limit.applyAsDouble(cells[c]));
            double deg = limited == stands ? stands : values.down(limited);
            made.add(new SparkMap.Cell(cells[c], Advance.ofDeg(deg)));
        }
        return new SparkMap(made);
    }

    private boolean isBetweenRows(int cell) {
        return rows[0] < cells[cell] && cells[cell] < rows[rows.length - 1];
    }

    private boolean feeds(int cell) {
        for (double part : share[cell]) {
            if (part > 0) {
                return true;
            }
        }
        return false;
    }

    /** How far a cell may go with the others as they stand. */
    private double room(int cell, double[] value, double[] rowLimit) {
        double most = Double.POSITIVE_INFINITY;
        for (int r = 0; r < rows.length; r++) {
            if (share[cell][r] > 0) {
                double others = 0;
                for (int c = 0; c < value.length; c++) {
                    others += c == cell ? 0 : share[c][r] * value[c];
                }
                most = Math.min(most, (rowLimit[r] - others) / share[cell][r]);
            }
        }
        return most;
    }
}
