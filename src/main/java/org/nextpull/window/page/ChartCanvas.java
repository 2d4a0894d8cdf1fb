package org.nextpull.window.page;

import java.awt.EventQueue;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.util.Optional;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.ToolTipManager;
import org.jspecify.annotations.Nullable;
import org.nextpull.chart.ChartSize;
import org.nextpull.chart.Charts;
import org.nextpull.chart.Plot;
import org.nextpull.window.look.Skin;
import org.nextpull.window.look.Styled;
import org.nextpull.window.look.TypeScale;

/**
 * A chart that fills its place. It is drawn into a picture on the drawing thread; the event thread only copies the last picture. Two
 * pictures take turns, so that a chart drawn ten times a second asks for no new memory. All fields belong to the event thread.
 */
public final class ChartCanvas extends JComponent implements Styled {
    private static final long serialVersionUID = 1;

    /** What a picture shows; two that are equal are the same picture. */
    private record Wanted(Plot plot, ChartSize size, Skin skin) {}

    private final transient Work work;
    private final String without;
    private transient @Nullable Plot plot;
    private transient @Nullable Skin skin;
    private transient @Nullable TypeScale scale;
    private transient @Nullable BufferedImage front;
    private transient @Nullable BufferedImage back;
    private transient @Nullable Wanted drawn;
    private transient Charts.@Nullable Reading reading;
    private boolean drawing;
    private int pictures;

    /**
     * An empty canvas.
     *
     * @param name what it shows
     * @param without what it says while it has nothing to show
     */
    public ChartCanvas(Work work, String name, String without) {
        this.work = work;
        this.without = without;
        ToolTipManager.sharedInstance().registerComponent(this);
        getAccessibleContext().setAccessibleName(name);
        getAccessibleContext().setAccessibleDescription(without);
    }

    /** Shows these data from the next picture on. */
    public void show(Optional<? extends Plot> newPlot, String description) {
        plot = newPlot.orElse(null);
        getAccessibleContext().setAccessibleDescription(newPlot.isPresent() ? description : without);
        if (plot == null) {
            repaint();
        }
        next();
    }

    /** The value below the pointer. */
    @Override
    public @Nullable String getToolTipText(MouseEvent event) {
        double density = density();
        return plot == null || reading == null
                ? null
                : reading.at(event.getX() * density, event.getY() * density).orElse(null);
    }

    /** How many pictures were drawn so far. */
    public int pictures() {
        return pictures;
    }

    @Override
    public void style(Skin newSkin, TypeScale newScale) {
        skin = newSkin;
        scale = newScale;
        next();
        repaint();
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                private static final long serialVersionUID = 1;

                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.CANVAS;
                }
            };
        }
        return accessibleContext;
    }

    @Override
    public void doLayout() {
        next();
    }

    private Optional<Wanted> wanted() {
        double density = density();
        if (plot == null || skin == null || scale == null) {
            return Optional.empty();
        }
        double points = Math.max(0.5, Math.min(8, scale.factor() * density));
        int width = (int) (getWidth() * density / points);
        int height = (int) (getHeight() * density / points);
        return width < 100 || height < 100
                ? Optional.empty()
                : Optional.of(new Wanted(plot, new ChartSize(width, height, points), skin));
    }

    private double density() {
        return getGraphicsConfiguration() == null
                ? 1
                : getGraphicsConfiguration().getDefaultTransform().getScaleX();
    }

    /** Starts the next picture, unless one is being drawn: then it starts after that. */
    private void next() {
        Optional<Wanted> wanted = wanted();
        if (drawing || wanted.isEmpty() || wanted.get().equals(drawn)) {
            return;
        }
        drawing = true;
        Wanted now = wanted.get();
        BufferedImage onto = fitting(back, now.size());
        work.draw(() -> {
            Charts.Reading read = paint(now, onto);
            EventQueue.invokeLater(() -> shown(now, onto, read));
        });
    }

    private void shown(Wanted now, BufferedImage picture, Charts.Reading read) {
        reading = read;
        back = front;
        front = picture;
        drawn = now;
        drawing = false;
        pictures++;
        repaint();
        next();
    }

    private static BufferedImage fitting(@Nullable BufferedImage old, ChartSize size) {
        int width = size.pixelsWide();
        int height = size.pixelsHigh();
        return old != null && old.getWidth() == width && old.getHeight() == height
                ? old
                : new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    }

    private Charts.Reading paint(Wanted now, BufferedImage onto) {
        Graphics2D surface = onto.createGraphics();
        surface.setColor(now.skin().ground());
        surface.fillRect(0, 0, onto.getWidth(), onto.getHeight());
        Charts.Reading read = new Charts(now.size(), now.skin().chart()).paint(now.plot(), surface);
        surface.dispose();
        return read;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        if (skin == null || scale == null) {
            return;
        }
        Graphics2D g = (Graphics2D) graphics.create();
        g.setColor(skin.ground());
        g.fillRect(0, 0, getWidth(), getHeight());
        if (plot != null && front != null) {
            double density = density();
            int width = (int) Math.round(front.getWidth() / density);
            int height = (int) Math.round(front.getHeight() / density);
            g.drawImage(front, 0, 0, width, height, null);
        } else if (plot == null) {
            g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            g.setFont(scale.plain(15));
            g.setColor(skin.quiet());
            int width = g.getFontMetrics().stringWidth(without);
            g.drawString(without, (getWidth() - width) / 2, getHeight() / 2);
        }
        g.dispose();
    }
}
