package org.nextpull.window.bench;

import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.FlowLayout;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.nextpull.report.NextStep.Figure;
import org.nextpull.window.look.Digits;
import org.nextpull.window.look.TypeScale;

/** A number in large print with its name below it, and beside the name what else is worth knowing of it. */
final class FigureView extends JPanel {
    private static final long serialVersionUID = 1;
    private static final double NAME = 20;

    private final Digits number = new Digits();
    private final JLabel name = new JLabel();
    private final JLabel beside = new JLabel();

    FigureView() {
        super(new BorderLayout());
        setOpaque(false);
        JPanel below = new JPanel(new FlowLayout(FlowLayout.LEFT, 0, 0));
        below.setOpaque(false);
        below.add(name);
        below.add(beside);
        add(number, BorderLayout.CENTER);
        add(below, BorderLayout.SOUTH);
    }

    /** Shows a figure; who does not see it finds the number under that accessible name. */
    void say(String accessible, Figure figure) {
        number.say(figure.number());
        number.getAccessibleContext().setAccessibleName(accessible);
        name.setText((figure.unit().isEmpty() ? figure.name() : figure.unit() + " " + figure.name()) + "   ");
        beside.setText(figure.change());
    }

    /** Colour and sizes. */
    void dress(Color ink, TypeScale scale) {
        number.ink(ink);
        name.setFont(scale.bold(NAME));
        beside.setFont(scale.plain(NAME - 2));
        name.setForeground(ink);
        beside.setForeground(ink);
    }

    /** What the number with its name needs at least, in pixels, when the number's capitals are so high. */
    static int leastHeight(TypeScale scale, int capitals) {
        return capitals + scale.type(NAME * 1.5) + scale.space(6);
    }
}
