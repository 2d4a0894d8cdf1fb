package org.nextpull.window.page;

import java.awt.Color;
import java.awt.Graphics;
import java.util.List;
import javax.swing.BorderFactory;
import org.nextpull.window.look.Prose;
import org.nextpull.window.look.StackLayout;
import org.nextpull.window.look.StyledPanel;
import org.nextpull.window.look.Tone;

/** What must be seen on every page: alarms, a dead link, a full disk. It stays as long as it holds. */
public final class Banners extends StyledPanel {
    private static final long serialVersionUID = 1;

    private final Prose text = new Prose("Urgent");

    public Banners() {
        super(new StackLayout());
        add(text);
        setVisible(false);
    }

    /** Shows these sentences, worst first; none hides it. */
    public void say(List<String> sentences) {
        text.say(String.join("\n", sentences));
        if (isVisible() == sentences.isEmpty()) {
            setVisible(!sentences.isEmpty());
        }
        revalidate();
    }

    @Override
    protected void dress() {
        int air = scale.space(7);
        setBorder(BorderFactory.createEmptyBorder(air, scale.type(44), air, scale.space(14)));
        text.dress(skin.onFill(), scale.bold(21));
    }

    /** Filled, with a black bar that has an exclamation mark: told by more than its colour. */
    @Override
    protected void paintComponent(Graphics g) {
        g.setColor(skin.fill(Tone.BAD));
        g.fillRect(0, 0, getWidth(), getHeight());
        g.setColor(Color.BLACK);
        int bar = scale.type(30);
        g.fillRect(0, 0, bar, getHeight());
        g.setColor(skin.fill(Tone.BAD));
        int width = Math.max(2, bar / 6);
        int top = getHeight() / 2 - bar / 2;
        g.fillRect((bar - width) / 2, top, width, bar * 2 / 3);
        g.fillRect((bar - width) / 2, top + bar * 5 / 6, width, width);
    }
}
