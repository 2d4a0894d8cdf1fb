package org.nextpull.chart;

import java.awt.Color;
import java.util.List;

/** The colours of lines that stand side by side: the first is the ink, as it is the one that others are seen against. */
final class LineColours {
    private LineColours() {}

    static List<Color> of(ChartLook look) {
        return List.of(
                look.ink(),
                look.curve(),
                Palette.VERMILLION.color(),
                Palette.BLUISH_GREEN.color(),
                Palette.REDDISH_PURPLE.color(),
                Palette.ORANGE.color());
    }
}
