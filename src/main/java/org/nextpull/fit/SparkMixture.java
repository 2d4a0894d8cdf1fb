package org.nextpull.fit;

/** Best advance of a row where the mixture shifts it, in one node. */
final class SparkMixture {
    private SparkMixture() {}

    static double peak(CommonColumns columns, SolvedCell cell, int row, double hundredths) {
        double shift = columns.mixture.isPresent() ? cell.common[columns.mixture.get()] * hundredths : 0;
        return cell.peak[row] + shift;
    }

    static double variance(CommonColumns columns, SolvedCell cell, int row, double hundredths) {
        return covariance(columns, cell, new RowPair(row, row), hundredths);
    }

    record RowPair(int row, int otherRow) {}

    static double covariance(CommonColumns columns, SolvedCell cell, RowPair rows, double hundredths) {
        double covariance = cell.peaks(rows.row, rows.otherRow);
        if (columns.mixture.isPresent() && hundredths != 0) {
            int shift = columns.mixture.get();
            covariance += hundredths * (cell.commonAndPeak(shift, rows.row) + cell.commonAndPeak(shift, rows.otherRow))
                    + hundredths * hundredths * cell.commons(shift, shift);
        }
        return covariance;
    }
}
