package org.nextpull.chart;

import java.awt.Color;

/**
 * The colours of the charts, the same for the same thing everywhere: the colour-blind-safe set of Okabe and Ito, "Color Universal
 * Design" (2008). Nothing is told by colour alone: markers and dashes differ as well.
 */
public enum Palette {
    BLACK(0x000000),
    ORANGE(0xE69F00),
    SKY_BLUE(0x56B4E9),
    BLUISH_GREEN(0x009E73),
    YELLOW(0xF0E442),
    BLUE(0x0072B2),
    VERMILLION(0xD55E00),
    REDDISH_PURPLE(0xCC79A7);

    private final int rgb;

    Palette(int rgb) {
        this.rgb = rgb;
    }

    public Color color() {
        return new Color(rgb);
    }
}
