package org.nextpull.window.bench;

import java.awt.BorderLayout;
import java.awt.GridLayout;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.nextpull.report.ConditionText;
import org.nextpull.window.look.StyledPanel;
import org.nextpull.window.look.Tone;

/** The start conditions: a sign, a value, and in the window or how far off. */
final class ConditionsView extends StyledPanel {
    private static final long serialVersionUID = 1;

    private final transient List<ConditionText.Line> lines = new ArrayList<>();

    ConditionsView() {
        super(new GridLayout());
        getAccessibleContext().setAccessibleName("Conditions");
    }

    void show(List<ConditionText.Line> newLines) {
        if (newLines.equals(lines)) {
            return;
        }
        lines.clear();
        lines.addAll(newLines);
        dress();
    }

    @Override
    protected void dress() {
        removeAll();
        setLayout(new GridLayout(1, Math.max(1, lines.size()), scale.space(8), 0));
        for (ConditionText.Line line : lines) {
            add(cell(line));
        }
        setBackground(skin.ground());
        setBorder(scale.margin(4, 34, 6, 10));
        revalidate();
        repaint();
    }

    private JPanel cell(ConditionText.Line line) {
        JPanel cell = new JPanel(new GridLayout(3, 1));
        cell.setOpaque(false);
        Tone tone = tone(line.place());
        JLabel sign = label(tone.sign() + " ", false);
        sign.setForeground(skin.tone(tone));
        JLabel name = label(line.name(), false);
        JPanel head = new JPanel(new BorderLayout());
        head.setOpaque(false);
        head.add(sign, BorderLayout.WEST);
        head.add(name, BorderLayout.CENTER);
        JLabel value = label(line.value(), true);
        value.setFont(scale.bold(17));
        JLabel words = label(line.words(), tone == Tone.WARN);
        cell.add(head);
        cell.add(value);
        cell.add(words);
        cell.getAccessibleContext().setAccessibleName(line.name());
        cell.getAccessibleContext()
                .setAccessibleDescription(line.value() + ", " + line.words() + ", asked for: " + line.window());
        cell.setToolTipText(line.window());
        return cell;
    }

    private JLabel label(String text, boolean bold) {
        JLabel label = new JLabel(text);
        type(label, bold ? scale.bold(13) : scale.plain(13), skin.ink());
        return label;
    }

    private static Tone tone(ConditionText.Line.Place place) {
        return switch (place) {
            case INSIDE -> Tone.GOOD;
            case BELOW, ABOVE -> Tone.WARN;
            case UNASKED, UNKNOWN -> Tone.PLAIN;
        };
    }
}
