package org.nextpull.window.page;

import java.awt.FlowLayout;
import java.awt.Graphics;
import java.util.ArrayList;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.nextpull.report.Cautions;
import org.nextpull.window.look.Prose;
import org.nextpull.window.look.Skin;
import org.nextpull.window.look.Stack;
import org.nextpull.window.look.Styled;
import org.nextpull.window.look.Tone;
import org.nextpull.window.look.TypeScale;

/** What must have been read before a session is shown: the cautions, a sentence or two each, and the one button that goes on. */
public final class CautionsPanel extends JPanel implements Styled {
    private static final long serialVersionUID = 1;
    private static final int MARGIN = 90;

    private final Stack stack = new Stack();
    private final JLabel title = new JLabel("Before you start");
    private final transient List<Prose> sentences = new ArrayList<>();
    private final JButton read = new JButton("I have read this");
    private transient Skin skin = Skin.of(org.nextpull.window.look.Look.plain());
    private transient TypeScale scale = TypeScale.of(1280, 720, org.nextpull.window.look.Look.plain());

    /**
     * The panel.
     *
     * @param goOn called when the operator says that it was read
     */
    public CautionsPanel(Runnable goOn) {
        setLayout(stack);
        add(title);
        int number = 0;
        for (String sentence : Cautions.sentences()) {
            number++;
            Prose prose = new Prose("Caution " + number);
            prose.say(sentence);
            sentences.add(prose);
            add(prose);
        }
        read.addActionListener(event -> goOn.run());
        KeyCommand.of("ENTER", "Enter", "say that the cautions were read", goOn).bind(this);
        JPanel below = new JPanel(new FlowLayout(FlowLayout.LEFT, 0, 0));
        below.setOpaque(false);
        below.add(read);
        add(below);
    }

    /** Puts the focus on the button. */
    public void focus() {
        read.requestFocusInWindow();
    }

    @Override
    public void style(Skin newSkin, TypeScale newScale) {
        skin = newSkin;
        scale = newScale;
        setBackground(skin.ground());
        int side = scale.space(MARGIN);
        setBorder(BorderFactory.createEmptyBorder(scale.space(50), side, scale.space(20), side));
        stack.gap(scale.space(18));
        title.setFont(scale.bold(40));
        title.setForeground(skin.ink());
        sentences.forEach(prose -> prose.dress(skin.ink(), scale.plain(19)));
        read.setFont(scale.bold(20));
        revalidate();
        repaint();
    }

    @Override
    protected void paintComponent(Graphics g) {
        super.paintComponent(g);
        g.setColor(skin.fill(Tone.WARN));
        g.fillRect(scale.space(40), scale.space(50), scale.space(14), getHeight() - scale.space(100));
    }
}
