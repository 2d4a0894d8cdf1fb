package org.nextpull.window.page;

import java.awt.FlowLayout;
import java.awt.Graphics;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.nextpull.report.Cautions;
import org.nextpull.window.look.Prose;
import org.nextpull.window.look.StackLayout;
import org.nextpull.window.look.StyledPanel;
import org.nextpull.window.look.Tone;

/** What must have been read before a session is shown: the cautions, a sentence or two each, and the one button that goes on. */
public final class CautionsPanel extends StyledPanel {
    private static final long serialVersionUID = 1;
    private static final int MARGIN = 90;

    private final StackLayout stack;
    private final JLabel title = new JLabel("Before you start");
    private final transient List<Prose> sentences = new ArrayList<>();
    private final JButton read = new JButton("I have read this");

    /**
     * The panel.
     *
     * @param goOn called when the operator says that it was read
     */
    public CautionsPanel(Runnable goOn) {
        super(new StackLayout());
        stack = (StackLayout) getLayout();
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
    protected void dress() {
        setBackground(skin.ground());
        setBorder(scale.margin(50, MARGIN, 20, MARGIN));
        stack.gap(scale.space(18));
        type(title, scale.bold(40), skin.ink());
        sentences.forEach(prose -> prose.dress(skin.ink(), scale.plain(19)));
        read.setFont(scale.bold(20));
    }

    @Override
    protected void paintComponent(Graphics g) {
        super.paintComponent(g);
        g.setColor(skin.fill(Tone.WARN));
        g.fillRect(scale.space(40), scale.space(50), scale.space(14), getHeight() - scale.space(100));
    }
}
