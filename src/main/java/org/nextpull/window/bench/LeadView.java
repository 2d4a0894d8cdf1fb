package org.nextpull.window.bench;

import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Graphics;
import java.awt.GridLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.nextpull.report.NextStep;
import org.nextpull.window.look.Prose;
import org.nextpull.window.look.StackLayout;
import org.nextpull.window.look.StyledPanel;
import org.nextpull.window.look.Tone;

/**
 * The next step in the largest print that fits. A stop turns ground and ink round, good news does not; a wait has a broken bar at its side. The numbers keep
 * their least height; sentences give way to them, the longest first.
 */
final class LeadView extends StyledPanel {
    private static final long serialVersionUID = 1;
    private static final int LOUD_LETTERS = 8;
    private static final int MOST_FIGURES = 3;

    /** Least height of the numbers' capitals: 20 mm on a screen of 24 inches. */
    private static final int CAPITALS = 48;

    private final StackLayout stack;
    private final JLabel word = new JLabel();
    private final JLabel about = new JLabel();
    private final JPanel numbers = new JPanel(new GridLayout(0, 1));
    private final transient List<FigureView> figures = new ArrayList<>();
    private final Prose because = new Prose("Because");
    private final Prose listen = new Prose("Listen");
    private final Prose whole = new Prose("Why, with the numbers");
    private NextStep.Kind kind = NextStep.Kind.NOTHING;
    private boolean isNew;

    LeadView() {
        super(new StackLayout());
        stack = (StackLayout) getLayout();
        getAccessibleContext().setAccessibleName("Next step");
        word.getAccessibleContext().setAccessibleName("What to do");
        about.getAccessibleContext().setAccessibleName("What for");
        JPanel head = new JPanel(new BorderLayout(14, 0));
        head.setOpaque(false);
        numbers.setOpaque(false);
        head.add(word, BorderLayout.WEST);
        head.add(about, BorderLayout.CENTER);
        add(head);
        add(numbers);
        add(because, StackLayout.Row.yielding(1));
        add(listen);
        add(whole, StackLayout.Row.yielding(2));
        for (int index = 0; index < MOST_FIGURES; index++) {
            figures.add(new FigureView());
        }
    }

    void show(NextStep lead) {
        kind = lead.kind();
        word.setText(lead.word().toUpperCase(Locale.ROOT).replaceFirst("(?<=\\d) S$", " s"));
        word.getAccessibleContext().setAccessibleDescription(lead.word());
        about.setText(lead.about());
        numbers.removeAll();
        for (int index = 0; index < Math.min(MOST_FIGURES, lead.figures().size()); index++) {
            NextStep.Figure figure = lead.figures().get(index);
            figures.get(index).say("Next " + figure.name(), figure);
            numbers.add(figures.get(index));
        }
        because.say(lead.because());
        listen.say(lead.listen().orElse(""));
        whole.say(lead.more());
        getAccessibleContext().setAccessibleDescription(lead.spoken());
        dress();
    }

    /** Shows that the numbers are new, as long as they are. */
    void flash(boolean newNumbers) {
        isNew = newNumbers;
        dress();
    }

    private boolean isTurned() {
        return kind == NextStep.Kind.STOP;
    }

    private Color ink() {
        return isTurned() ? skin.ground() : skin.ink();
    }

    @Override
    protected void dress() {
        setBackground(isTurned() ? skin.ink() : isNew ? skin.selection() : skin.ground());
        setBorder(scale.margin(6, 34, 8, 16));
        stack.gap(scale.space(8));
        int each = FigureView.leastHeight(scale, scale.space(CAPITALS));
        stack.row(numbers, StackLayout.Row.stretching(each * numbers.getComponentCount()));
        boolean loud = kind == NextStep.Kind.STOP || kind == NextStep.Kind.WAIT || kind == NextStep.Kind.DONE;
        type(word, scale.bold(loud && word.getText().length() <= LOUD_LETTERS ? 64 : 40), ink());
        type(about, scale.plain(18), ink());
        figures.forEach(figure -> figure.dress(ink(), scale));
        because.dress(ink(), scale.bold(20));
        listen.dress(ink(), scale.bold(20));
        whole.dress(isTurned() ? skin.ground() : skin.quiet(), scale.plain(13));
        revalidate();
        repaint();
    }

    /** A bar at the side: whole for a pull, broken for a wait, doubled for a repeat. */
    @Override
    protected void paintComponent(Graphics g) {
        super.paintComponent(g);
        int bar = scale.space(12);
        int high = getHeight();
        switch (kind) {
            case PULL -> {
                g.setColor(skin.chosen());
                g.fillRect(0, 0, bar, high);
            }
            case REPEAT -> {
                g.setColor(skin.chosen());
                g.fillRect(0, 0, bar * 2 / 5, high);
                g.fillRect(bar * 3 / 5, 0, bar * 2 / 5, high);
            }
            case WAIT -> {
                g.setColor(skin.fill(Tone.WARN));
                for (int y = 0; y < high; y += 2 * bar) {
                    g.fillRect(0, y, bar, bar);
                }
            }
            case DONE -> {
                g.setColor(skin.fill(Tone.GOOD));
                g.fillRect(0, 0, bar, high);
            }
            case STOP, NOTHING -> {
                g.setColor(skin.quiet());
                g.fillRect(0, 0, bar, high);
            }
        }
    }
}
