package org.nextpull.math.regression;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.nextpull.math.Series;

/**
 * The columns of a linear model, all of one length.
 *
 * @param columns the columns without the constant one
 * @param intercept whether a constant comes first
 */
public record Design(List<Series> columns, boolean intercept) {
    /**
     * Accepts one column or more.
     *
     * @throws IllegalArgumentException without a column, or when the columns differ in length
     */
    public Design {
        columns = List.copyOf(columns);
        if (columns.isEmpty()) {
            throw new IllegalArgumentException("a design has at least one column");
        }
        int rows = columns.get(0).size();
        if (columns.stream().anyMatch(column -> column.size() != rows)) {
            throw new IllegalArgumentException("the columns of a design are of one length");
        }
    }

    /** Coefficient 0 is the constant, then one for each column. */
    public static Design withIntercept(Series... columns) {
        return new Design(List.of(columns), true);
    }

    /** One coefficient a column and no constant. */
    public static Design withoutIntercept(Series... columns) {
        return new Design(List.of(columns), false);
    }

    /** The same with one more column at the end. */
    public Design with(Series column) {
        List<Series> all = new ArrayList<>(columns);
        all.add(column);
        return new Design(all, intercept);
    }

    public int rows() {
        return columns.get(0).size();
    }

    /** How many coefficients there are. */
    public int coefficients() {
        return columns.size() + (intercept ? 1 : 0);
    }

    /** A line a reading, a column a coefficient. */
    Array2DRowRealMatrix matrix() {
        int shift = intercept ? 1 : 0;
        double[][] cells = new double[rows()][coefficients()];
        for (int row = 0; row < cells.length; row++) {
            cells[row][0] = 1;
            for (int column = 0; column < columns.size(); column++) {
                cells[row][column + shift] = columns.get(column).get(row);
            }
        }
        return new Array2DRowRealMatrix(cells, false);
    }
}
