package org.nextpull.window.look;

import java.awt.Color;
import org.nextpull.chart.ChartLook;
import org.nextpull.chart.Palette;

/** Colours of the window: those of the charts, so that page and picture are one. */
public final class Skin {
    private final ChartLook chart;
    private final boolean dark;

    private Skin(ChartLook chart, boolean dark) {
        this.chart = chart;
        this.dark = dark;
    }

    public static Skin of(Look look) {
        return new Skin(look.dark() ? ChartLook.dark() : ChartLook.light(), look.dark());
    }

    public ChartLook chart() {
        return chart;
    }

    public Color ground() {
        return chart.ground();
    }

    public Color ink() {
        return chart.ink();
    }

    /** Lines and frames. */
    public Color line() {
        return chart.grid();
    }

    /** Text that matters less; at least 4.5 to 1 against the ground. */
    public Color quiet() {
        return mixed(chart.ink(), chart.ground(), 0.68);
    }

    /** A ground that stands out a little. */
    public Color raised() {
        return mixed(chart.ink(), chart.ground(), 0.06);
    }

    /** The colour of a sign or a bar. */
    public Color tone(Tone tone) {
        return switch (tone) {
            case GOOD -> Palette.BLUISH_GREEN.color();
            case PLAIN -> quiet();
            case WARN -> Palette.ORANGE.color();
            case BAD -> Palette.VERMILLION.color();
        };
    }

    /** The colour of what is selected. */
    public Color chosen() {
        return dark ? Palette.SKY_BLUE.color() : Palette.BLUE.color();
    }

    /** Text upon orange or vermillion. */
    public Color onTone() {
        return Palette.BLACK.color();
    }

    private static Color mixed(Color one, Color other, double share) {
        return new Color(
                part(one.getRed(), other.getRed(), share),
                part(one.getGreen(), other.getGreen(), share),
                part(one.getBlue(), other.getBlue(), share));
    }

    private static int part(int one, int other, double share) {
        return (int) Math.round(one * share + other * (1 - share));
    }
}
