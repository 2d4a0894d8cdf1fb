package org.nextpull.window.bench;

import java.awt.BorderLayout;
import java.awt.FlowLayout;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.nextpull.window.look.Skin;
import org.nextpull.window.look.StyledPanel;
import org.nextpull.window.look.Tone;
import org.nextpull.window.look.TypeScale;

/** The head of the page: what the day is about, how the data arrives, and whether it is kept. */
final class StatusView extends StyledPanel {
    private static final long serialVersionUID = 1;

    private final JLabel heading = new JLabel();
    private final JPanel states = new JPanel(new FlowLayout(FlowLayout.RIGHT, 0, 0));
    private final Lamp link = new Lamp("Link");
    private final Lamp recording = new Lamp("Recording");

    /** A sign and a sentence. */
    private static final class Lamp extends JPanel {
        private static final long serialVersionUID = 1;
        private final JLabel sign = new JLabel();
        private final JLabel words = new JLabel();
        private Tone tone = Tone.PLAIN;

        Lamp(String name) {
            super(new FlowLayout(FlowLayout.LEFT, 0, 0));
            setOpaque(false);
            words.getAccessibleContext().setAccessibleName(name);
            add(sign);
            add(words);
        }

        void show(BenchPage.Remark remark) {
            tone = remark.tone();
            sign.setText(tone.sign() + " ");
            words.setText(remark.sentence() + "   ");
            words.getAccessibleContext().setAccessibleDescription(remark.sentence());
        }

        void dress(Skin skin, TypeScale scale) {
            type(sign, scale.plain(16), skin.tone(tone));
            type(words, tone == Tone.PLAIN ? scale.plain(13) : scale.bold(13), skin.ink());
        }

        void tint(Skin skin) {
            sign.setForeground(skin.tone(tone));
        }
    }

    StatusView() {
        super(new BorderLayout(14, 0));
        heading.getAccessibleContext().setAccessibleName("Session");
        states.setOpaque(false);
        states.add(link);
        states.add(recording);
        add(heading, BorderLayout.CENTER);
        add(states, BorderLayout.EAST);
    }

    void show(BenchPage page) {
        heading.setText(page.heading());
        link.show(page.link());
        recording.show(page.recording());
        link.tint(skin);
        recording.tint(skin);
    }

    @Override
    protected void dress() {
        setBackground(skin.ground());
        setBorder(skin.underlined(scale, scale.margin(5, 14, 5, 2)));
        type(heading, scale.bold(13), skin.ink());
        link.dress(skin, scale);
        recording.dress(skin, scale);
    }
}
