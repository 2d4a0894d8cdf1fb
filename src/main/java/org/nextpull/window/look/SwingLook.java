package org.nextpull.window.look;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
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
import javax.swing.UIManager;
import javax.swing.plaf.ColorUIResource;
import org.nextpull.chart.Palette;

/** Gives the toolkit's own parts the colours of the window: what is selected is read, and what has the focus is seen. */
public final class SwingLook {
    private static final int FOCUS_PIXELS = 2;

    private SwingLook() {}

    /** Dresses everything that is shown, and what will be. On the event thread. */
    public static void dress(Look look) {
        Skin skin = Skin.of(look);
        ColorUIResource ground = new ColorUIResource(skin.selection());
        ColorUIResource ink = new ColorUIResource(skin.ink());
        for (String part : List.of("List", "Table", "MenuItem", "Menu", "ComboBox")) {
            for (String state : List.of("selection", "selectionInactive")) {
                UIManager.put(part + "." + state + "Background", ground);
                UIManager.put(part + "." + state + "Foreground", ink);
            }
        }
        ColorUIResource chosen = new ColorUIResource(skin.chosen());
        UIManager.put("Component.focusColor", chosen);
        UIManager.put("Component.focusedBorderColor", chosen);
        UIManager.put("Component.focusWidth", FOCUS_PIXELS);
        if (look.dark()) {
            FlatDarkLaf.setup();
        } else {
            FlatLightLaf.setup();
        }
        FlatLaf.updateUI();
    }

    /** In the sizes that desktops ask for. */
    public static List<Image> images() {
        return Stream.of(16, 32, 48, 64, 128, 256).map(SwingLook::image).toList();
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
