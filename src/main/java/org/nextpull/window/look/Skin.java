package org.nextpull.window.look;

import java.awt.Color;
import javax.swing.BorderFactory;
import javax.swing.border.Border;
import org.nextpull.chart.ChartLook;
import org.nextpull.chart.Palette;

/** Colours of the window: those of the charts, so that page and picture are one. */
public final class Skin {
    private static final double LEAST_CONTRAST = 4.5;

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

    /** A margin with a line below it. */
    public Border underlined(TypeScale scale, Border margin) {
        return BorderFactory.createCompoundBorder(
                BorderFactory.createMatteBorder(0, 0, Math.max(1, scale.space(1)), 0, line()), margin);
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

    /** The colour of a sign or of words; at least 4.5 to 1 against the ground. */
    public Color tone(Tone tone) {
        return tone == Tone.PLAIN ? quiet() : readable(fill(tone));
    }

    /** The colour of a number: ink, unless it must be looked at. */
    public Color text(Tone tone) {
        return tone == Tone.PLAIN || tone == Tone.GOOD ? ink() : tone(tone);
    }

    /** The colour of a filled place. */
    public Color fill(Tone tone) {
        return switch (tone) {
            case GOOD -> Palette.BLUISH_GREEN.color();
            case PLAIN -> chosen();
            case WARN -> Palette.ORANGE.color();
            case BAD -> Palette.VERMILLION.color();
        };
    }

    /** The colour of what is selected. */
    public Color chosen() {
        return dark ? Palette.SKY_BLUE.color() : Palette.BLUE.color();
    }

    /** The ground of what is selected in a list or table, under words in ink. */
    public Color selection() {
        return mixed(chosen(), chart.ground(), dark ? 0.3 : 0.2);
    }

    /** Text upon orange or vermillion. */
    public Color onFill() {
        return Palette.BLACK.color();
    }

    /** The colour, moved towards the ink as far as it must be to be read on the ground and on what is raised. */
    private Color readable(Color colour) {
        double share = 1;
        Color moved = colour;
        while (share > 0 && contrast(moved, raised()) < LEAST_CONTRAST) {
            share -= 0.05;
            moved = mixed(colour, chart.ink(), share);
        }
        return moved;
    }

    /** Contrast of two colours, 1 to 21, dimensionless: Web Content Accessibility Guidelines 2.1, "contrast ratio". */
    public static double contrast(Color one, Color other) {
        double first = luminance(one);
        double second = luminance(other);
        return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
    }

    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(int part) {
        double share = part / 255.0;
        return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
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
