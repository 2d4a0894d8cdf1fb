package org.nextpull.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.util.List;
import java.util.Locale;
import org.knowm.xchart.style.Styler;
import org.knowm.xchart.style.XYStyler;

/**
 * Ground and ink of a chart.
 *
 * @param ground background
 * @param ink text and axes
 * @param grid grid lines
 */
public record ChartLook(Color ground, Color ink, Color grid) {
    static final String FONT = "DejaVu Sans";

    /** About so many CSS pixels lie between two numbers of an axis. */
    static final int X_TICKS = 90;

    static final int Y_TICKS = 50;

    /** A legend lies close to the title of the axis and must not cover it. */
    private static final Color CLEAR = new Color(0, 0, 0, 0);

    /** The colour of curves: the palette's blue, and its lighter blue on a dark ground, where the other is hard to see. */
    Color curve() {
        int brightness = ground.getRed() + ground.getGreen() + ground.getBlue();
        return (brightness > 3 * 127 ? Palette.BLUE : Palette.SKY_BLUE).color();
    }

    /** The colours of lines that stand side by side: the first is the ink, as it is the one that others are seen against. */
    List<Color> lines() {
        return List.of(
                ink,
                curve(),
                Palette.VERMILLION.color(),
                Palette.BLUISH_GREEN.color(),
                Palette.REDDISH_PURPLE.color(),
                Palette.ORANGE.color());
    }

    /** For paper and the plain light window. */
    public static ChartLook light() {
        return new ChartLook(Color.WHITE, new Color(0x202020), new Color(0xDDDDDD));
    }

    /** For the plain dark window. */
    public static ChartLook dark() {
        return new ChartLook(new Color(0x1E1E1E), new Color(0xE6E6E6), new Color(0x444444));
    }

    /**
     * Gives a chart its colours, its type and its room.
     *
     * @param scale pixels for each CSS pixel
     */
    void dress(XYStyler styler, float scale) {
        Font plain = new Font(FONT, Font.PLAIN, Math.round(12 * scale));
        styler.setChartBackgroundColor(ground);
        styler.setPlotBackgroundColor(ground);
        styler.setPlotBorderVisible(false);
        styler.setPlotContentSize(1);
        styler.setPlotMargin(0);
        styler.setChartPadding(Math.round(8 * scale));
        styler.setChartTitlePadding(Math.round(8 * scale));
        styler.setPlotGridLinesColor(grid);
        styler.setPlotGridLinesStroke(new BasicStroke(scale));
        styler.setChartFontColor(ink);
        styler.setChartTitleFont(plain.deriveFont(Font.BOLD, 14 * scale));
        styler.setChartTitleBoxVisible(false);
        styler.setAxisTitleFont(plain);
        styler.setAxisTickLabelsFont(plain);
        styler.setAxisTickLabelsColor(ink);
        styler.setAxisTickMarksColor(ink);
        styler.setLegendFont(plain);
        styler.setAnnotationTextFont(plain);
        styler.setAnnotationTextFontColor(ink);
        styler.setLegendPadding(Math.round(8 * scale));
        styler.setLegendSeriesLineLength(Math.round(22 * scale));
        styler.setLegendBackgroundColor(CLEAR);
        styler.setLegendBorderColor(CLEAR);
        styler.setLegendPosition(Styler.LegendPosition.OutsideS);
        styler.setLegendLayout(Styler.LegendLayout.Horizontal);
        styler.setMarkerSize(Math.round(9 * scale));
        styler.setXAxisTickMarkSpacingHint(Math.round(X_TICKS * scale));
        styler.setYAxisTickMarkSpacingHint(Math.round(Y_TICKS * scale));
        styler.setLocale(Locale.ROOT);
    }
}
