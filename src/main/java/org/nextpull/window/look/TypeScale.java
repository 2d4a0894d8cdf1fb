package org.nextpull.window.look;

import java.awt.Font;
import javax.swing.BorderFactory;
import javax.swing.border.Border;

/**
 * Sizes of type and space, in units of a window of 1280 by 720: a larger window has larger type, since it stands further away or has
 * finer pixels.
 */
public final class TypeScale {
    private static final double WIDE = 1280;
    private static final double HIGH = 720;
    private static final double LARGER = 1.2;

    private final double unit;
    private final double type;

    private TypeScale(double unit, double type) {
        this.unit = unit;
        this.type = type;
    }

    /**
     * The scale of a window.
     *
     * @param width its width in pixels
     * @param height its height
     * @param look whether type is larger
     */
    public static TypeScale of(int width, int height, Look look) {
        double unit = Math.max(0.5, Math.min(width / WIDE, height / HIGH));
        return new TypeScale(unit, look.large() ? unit * LARGER : unit);
    }

    /** The scale before a window has its size. */
    public static TypeScale usual() {
        return of((int) WIDE, (int) HIGH, Look.plain());
    }

    /** A margin in units that do not grow with larger type: above, left, below, right. */
    public Border margin(int above, int left, int below, int right) {
        return BorderFactory.createEmptyBorder(space(above), space(left), space(below), space(right));
    }

    /** A length in pixels that does not grow with larger type. */
    public int space(double units) {
        return (int) Math.round(units * unit);
    }

    /** A length in pixels that grows with the type. */
    public int type(double units) {
        return (int) Math.round(units * type);
    }

    /** How much larger than at 1280 by 720 text is. */
    public double factor() {
        return type;
    }

    public Font plain(double size) {
        return font(Font.PLAIN, size);
    }

    public Font bold(double size) {
        return font(Font.BOLD, size);
    }

    private Font font(int style, double size) {
        return new Font(Font.SANS_SERIF, style, 1).deriveFont(style, (float) Math.max(8, size * type));
    }

    /** Whether the step to another scale is worth setting all type anew. */
    public boolean isLike(TypeScale other) {
        return Math.abs(unit - other.unit) < 0.01 && Math.abs(type - other.type) < 0.01;
    }
}
