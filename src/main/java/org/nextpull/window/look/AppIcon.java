package org.nextpull.window.look;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.QuadCurve2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.stream.Stream;
import org.nextpull.chart.Palette;

/** The icon of the window: a curve that turns over, with a mark at its top. */
public final class AppIcon {
    private AppIcon() {}

    /** In the sizes that desktops ask for. */
    public static List<Image> images() {
        return Stream.of(16, 32, 48, 64, 128, 256).map(AppIcon::image).toList();
    }

    private static Image image(int size) {
        BufferedImage image = new BufferedImage(size, size, BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setColor(Palette.BLUE.color());
        g.fillRect(0, 0, size, size);
        g.setColor(Color.WHITE);
        g.setStroke(new BasicStroke(size / 9f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(new QuadCurve2D.Double(0.14 * size, 0.82 * size, 0.55 * size, -0.18 * size, 0.88 * size, 0.72 * size));
        g.setColor(Palette.ORANGE.color());
        double mark = 0.26 * size;
        g.fill(new Ellipse2D.Double(0.54 * size - mark / 2, 0.28 * size - mark / 2, mark, mark));
        g.dispose();
        return image;
    }
}
