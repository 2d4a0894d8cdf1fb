package org.nextpull.window.look;

import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;

/** A part that is scrolled, without a frame and on the ground of the window. */
public final class ScrollView extends JScrollPane implements Styled {
    private static final long serialVersionUID = 1;

    private ScrollView(JComponent inside, int vertical, int horizontal) {
        super(inside, vertical, horizontal);
        setBorder(BorderFactory.createEmptyBorder());
    }

    /** Scrolled up and down, as wide as its place. */
    public static ScrollView upright(JComponent inside) {
        return new ScrollView(
                inside,
                ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
                ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
    }

    /** Scrolled either way where its place is too small. */
    public static ScrollView of(JComponent inside) {
        return new ScrollView(
                inside,
                ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
                ScrollPaneConstants.HORIZONTAL_SCROLLBAR_AS_NEEDED);
    }

    /** Scrolled to the left and to the right, as high as its place. */
    public static ScrollView across(JComponent inside) {
        return new ScrollView(
                inside,
                ScrollPaneConstants.VERTICAL_SCROLLBAR_NEVER,
                ScrollPaneConstants.HORIZONTAL_SCROLLBAR_AS_NEEDED);
    }

    /** What is inside with it, where that can be. */
    @Override
    public void style(Skin skin, TypeScale scale) {
        setBackground(skin.ground());
        getViewport().setBackground(skin.ground());
        if (getViewport().getView() instanceof Styled inside) {
            inside.style(skin, scale);
        }
    }
}
