package org.nextpull.window;

import java.awt.BorderLayout;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.nextpull.unit.UnitSystem;
import org.nextpull.window.look.Prose;
import org.nextpull.window.look.Skin;
import org.nextpull.window.look.TypeScale;
import org.nextpull.window.page.KeyCommand;
import org.nextpull.window.page.Page;

/** Stands where the bench will be, while no day is open. */
final class EmptyBench implements Page {
    private final JPanel view = new JPanel(new BorderLayout());
    private final Prose words = new Prose("Bench");

    EmptyBench() {
        words.say("No day is open. Key 2 starts a session, key 3 opens one of the notebook.");
        view.add(words, BorderLayout.CENTER);
        view.setFocusable(true);
    }

    @Override
    public String title() {
        return "Bench";
    }

    @Override
    public String hint() {
        return "2: start a session    3: open a past one    F1: all keys";
    }

    @Override
    public JComponent view() {
        return view;
    }

    @Override
    public List<KeyCommand> keys() {
        return List.of();
    }

    @Override
    public void units(UnitSystem units) {
        // nothing has a unit
    }

    @Override
    public void focus() {
        view.requestFocusInWindow();
    }

    @Override
    public void style(Skin skin, TypeScale scale) {
        view.setBackground(skin.ground());
        int margin = scale.space(60);
        view.setBorder(BorderFactory.createEmptyBorder(margin, margin, margin, margin));
        words.dress(skin.ink(), scale.plain(22));
    }
}
