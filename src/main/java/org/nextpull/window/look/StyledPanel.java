package org.nextpull.window.look;

import java.awt.Color;
import java.awt.Component;
import java.awt.Font;
import java.awt.LayoutManager;
import javax.swing.JButton;
import javax.swing.JPanel;

/** A panel that knows its colours and sizes, and is dressed anew when they change or when what it shows does. */
public abstract class StyledPanel extends JPanel implements Styled {
    private static final long serialVersionUID = 1;

    /** The colours of the window. */
    protected transient Skin skin = Skin.of(Look.plain());

    /** The sizes of the window. */
    protected transient TypeScale scale = TypeScale.usual();

    protected StyledPanel(LayoutManager layout) {
        super(layout);
    }

    @Override
    public final void style(Skin newSkin, TypeScale newScale) {
        skin = newSkin;
        scale = newScale;
        dress();
        revalidate();
        repaint();
    }

    /** Sets colours, type and margins. */
    protected abstract void dress();

    /** Gives this panel and parts of it the colour of the ground. */
    protected final void ground(Component... parts) {
        setBackground(skin.ground());
        for (Component part : parts) {
            part.setBackground(skin.ground());
        }
    }

    protected static void type(Component part, Font font, Color colour) {
        part.setFont(font);
        part.setForeground(colour);
    }

    /** A button that does that. */
    protected static JButton button(String text, Runnable action) {
        JButton button = new JButton(text);
        button.addActionListener(event -> action.run());
        return button;
    }
}
