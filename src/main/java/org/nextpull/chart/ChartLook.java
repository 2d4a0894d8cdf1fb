package org.nextpull.chart;

import java.awt.Color;
import java.util.List;

/**
 * Ground and ink of a chart.
 *
 * @param ground background
 * @param ink text and axes
 * @param grid grid lines
 */
public record ChartLook(Color ground, Color ink, Color grid) {
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
}
