package org.nextpull.fit;

/** Best advance of a row where the mixture shifts it, in one node. */
final class SparkMixture {
    private SparkMixture() {}

    static double peak(CommonColumns columns, SolvedCell cell, int row, double hundredths) {
        double shift = columns.mixture.isPresent() ? cell.common[columns.mixture.get()] * hundredths : 0;
        return cell.peak[row] + shift;
    }

    static double variance(CommonColumns columns, SolvedCell cell, int row, double hundredths) {
        return covariance(columns, cell, row, row, hundredths);
    }

    static double covariance(CommonColumns columns, SolvedCell cell, int row, int otherRow, double hundredths) {
        double covariance = cell.peaks(row, otherRow);
        if (columns.mixture.isPresent() && hundredths != 0) {
            int shift = columns.mixture.get();
            covariance += hundredths * (cell.commonAndPeak(shift, row) + cell.commonAndPeak(shift, otherRow))
                    + hundredths * hundredths * cell.commons(shift, shift);
        }
        return covariance;
    }
}
