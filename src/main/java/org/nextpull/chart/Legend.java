package org.nextpull.chart;

import java.util.List;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.Styler;
import org.knowm.xchart.style.XYStyler;

/** The legend of a chart: below it on one line, in smaller type where it must be, else beside it or not at all. Lengths are in CSS pixels. */
final class Legend {
    /** A letter about. */
    static final double LETTER = 6.7;

    /** What a sign with its gaps takes. */
    private static final double SIGN = 34;

    /** Between the entries on one line, where the library leaves none. */
    private static final String GAP = "    ";

    /** More entries than this do not fit below a chart on one line. */
    private static final int MOST_BELOW = 5;

    /** Its type, and the least to which it shrinks where its entries would not fit on a line. */
    private static final double TYPE = 12;

    private static final double LEAST_TYPE = 9;

    /** A chart narrower than this has no room for a legend beside it. */
    private static final int NARROW = 420;

    private Legend() {}

    /**
     * Places it.
     *
     * @param scale pixels for each CSS pixel
     */
    static void place(XYChart chart, float scale) {
        XYStyler styler = chart.getStyler();
        List<XYSeries> entries = chart.getSeriesCollection().stream()
                .filter(XYSeries::isShowInLegend)
                .toList();
        double letters = entries.stream()
                .mapToDouble(series -> (series.getName().length() + GAP.length()) * LETTER)
                .sum();
        double type = TYPE * (chart.getWidth() / scale - entries.size() * SIGN) / letters;
        boolean isBelow = entries.size() <= MOST_BELOW || type >= LEAST_TYPE;
        if (type < LEAST_TYPE && chart.getWidth() < NARROW * scale) {
            // the pointer still names each sign
            styler.setLegendVisible(false);
        } else if (isBelow && type < TYPE) {
            styler.setLegendFont(styler.getLegendFont().deriveFont((float) Math.max(LEAST_TYPE, type) * scale));
        }
        if (isBelow) {
            chart.getSeriesCollection().forEach(series -> series.setLabel(series.getName() + GAP));
        } else {
            styler.setLegendPosition(Styler.LegendPosition.OutsideE);
            styler.setLegendLayout(Styler.LegendLayout.Vertical);
        }
    }
}
