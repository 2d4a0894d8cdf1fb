package org.nextpull.window.look;

import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.event.MouseEvent;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JSplitPane;

/** Two parts with a bar between them that can be moved. The first keeps its share of the place, also when the window changes its size. */
public final class SharedSplit extends JSplitPane implements Styled {
    private static final long serialVersionUID = 1;
    private static final int LEAST = 60;

    private double share;
    private int room;

    /**
     * Two parts.
     *
     * @param way {@link JSplitPane#HORIZONTAL_SPLIT} for one beside the other
     * @param share what the first part has of the place at first, dimensionless, 0 to 1
     */
    public SharedSplit(int way, JComponent first, JComponent second, double share) {
        super(way, true, sized(first), sized(second));
        this.share = share;
        setBorder(BorderFactory.createEmptyBorder());
        setOpaque(false);
        setFocusable(false);
    }

    private static JComponent sized(JComponent part) {
        part.setMinimumSize(new Dimension(LEAST, LEAST));
        part.setPreferredSize(new Dimension(LEAST, LEAST));
        return part;
    }

    @Override
    public void setDividerLocation(int location) {
        super.setDividerLocation(location);
        boolean isMoved = EventQueue.getCurrentEvent() instanceof MouseEvent;
        if (isMoved && location > 0 && room > 0) {
            share = location / (double) room;
        }
    }

    @Override
    public void doLayout() {
        int now = getOrientation() == HORIZONTAL_SPLIT ? getWidth() : getHeight();
        if (now != room) {
            // a layout of another size hands its space out by itself and takes no notice of the place of the bar
            super.doLayout();
            room = now;
            super.setDividerLocation((int) (share * now));
        }
        super.doLayout();
    }

    @Override
    public void style(Skin skin, TypeScale scale) {
        setDividerSize(scale.space(6));
        setBackground(skin.ground());
    }
}
