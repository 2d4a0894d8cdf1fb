package org.nextpull.window.look;

import java.awt.Dimension;
import java.awt.Rectangle;
import javax.swing.Scrollable;

/** Parts below one another that are as wide as their place and are scrolled up and down. */
public abstract class ScrolledPanel extends StyledPanel implements Scrollable {
    private static final long serialVersionUID = 1;

    private final double line;

    /**
     * A panel.
     *
     * @param line height of what it is moved by, in the units of type
     */
    protected ScrolledPanel(StackLayout stack, double line) {
        super(stack);
        this.line = line;
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return scale.type(line);
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return visible.height * 9 / 10;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return false;
    }
}
