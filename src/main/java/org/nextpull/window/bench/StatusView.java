package org.nextpull.window.bench;

import java.awt.BorderLayout;
import java.awt.FlowLayout;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.nextpull.window.look.Look;
import org.nextpull.window.look.Skin;
import org.nextpull.window.look.Styled;
import org.nextpull.window.look.Tone;
import org.nextpull.window.look.TypeScale;

/** The head of the page: what the day is about, how the data arrives, and whether it is kept. */
final class StatusView extends JPanel implements Styled {
    private static final long serialVersionUID = 1;

    private final JLabel heading = new JLabel();
    private final JPanel states = new JPanel(new FlowLayout(FlowLayout.RIGHT, 0, 0));
    private final Lamp running = new Lamp("Pull in progress");
    private final Lamp link = new Lamp("Link");
    private final Lamp recording = new Lamp("Recording");
    private transient Skin skin = Skin.of(Look.plain());

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
            sign.setFont(scale.plain(16));
            sign.setForeground(skin.tone(tone));
            words.setFont(tone == Tone.PLAIN ? scale.plain(13) : scale.bold(13));
            words.setForeground(skin.ink());
        }

        void tint(Skin skin) {
            sign.setForeground(skin.tone(tone));
        }
    }

    StatusView() {
        super(new BorderLayout(14, 0));
        heading.getAccessibleContext().setAccessibleName("Session");
        states.setOpaque(false);
        states.add(running);
        states.add(link);
        states.add(recording);
        add(heading, BorderLayout.CENTER);
        add(states, BorderLayout.EAST);
    }

    void show(BenchPage page) {
        heading.setText(page.heading());
        running.setVisible(page.running().isPresent());
        page.running().ifPresent(running::show);
        link.show(page.link());
        recording.show(page.recording());
        link.tint(skin);
        recording.tint(skin);
        running.tint(skin);
    }

    @Override
    public void style(Skin newSkin, TypeScale scale) {
        skin = newSkin;
        setBackground(skin.ground());
        setBorder(BorderFactory.createCompoundBorder(
                BorderFactory.createMatteBorder(0, 0, Math.max(1, scale.space(1)), 0, skin.line()),
                BorderFactory.createEmptyBorder(scale.space(5), scale.space(14), scale.space(5), scale.space(2))));
        heading.setFont(scale.bold(13));
        heading.setForeground(skin.ink());
        link.dress(skin, scale);
        recording.dress(skin, scale);
        running.dress(skin, scale);
        revalidate();
    }
}
