package org.nextpull.window.start;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JTextField;
import org.nextpull.window.look.Prose;
import org.nextpull.window.look.StackLayout;
import org.nextpull.window.look.StyledPanel;
import org.nextpull.window.look.Tone;
import org.nextpull.window.look.Typing;

/** One field of the form: its name, what is typed, its unit, and below what is wrong with it. */
final class RowView extends StyledPanel {
    private static final long serialVersionUID = 1;
    private static final double NAME = 0.46;
    private static final double INPUT = 0.35;

    private final JLabel name;
    private final JComponent input;
    private final JLabel unit = new JLabel();
    private final JPanel line = new JPanel(new GridBagLayout());
    private final Prose wrong = new Prose("What is wrong");
    private transient FormPage.Row row;

    /**
     * A field.
     *
     * @param typed is told what the operator types
     * @param focused is told when the field has the focus
     */
    RowView(FormPage.Row row, Consumer<String> typed, Consumer<FormPage.Row> focused) {
        super(new StackLayout());
        this.row = row;
        this.name = new JLabel(row.field().label());
        this.input = row.words().isEmpty() ? text(row, typed) : choice(row, typed);
        name.setLabelFor(input);
        input.addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                focused.accept(RowView.this.row);
                scrollRectToVisible(new Rectangle(0, -40, getWidth(), getHeight() + 80));
            }
        });
        setOpaque(false);
        line.setOpaque(false);
        place(name, NAME);
        place(input, INPUT);
        place(unit, 1 - NAME - INPUT);
        add(line);
        add(wrong);
        show(row);
    }

    private static JTextField text(FormPage.Row row, Consumer<String> typed) {
        JTextField field = new JTextField(row.typed());
        // a text longer than its field is seen from its beginning
        field.setCaretPosition(0);
        Typing.in(field, typed);
        return field;
    }

    private JComboBox<String> choice(FormPage.Row first, Consumer<String> typed) {
        Set<String> words = new LinkedHashSet<>();
        words.add("");
        words.addAll(first.words());
        words.add(first.typed());
        JComboBox<String> box = new JComboBox<>(words.toArray(new String[0]));
        box.setSelectedItem(first.typed());
        box.setRenderer(new DefaultListCellRenderer() {
            private static final long serialVersionUID = 1;

            @Override
            public Component getListCellRendererComponent(
                    JList<?> list, Object value, int index, boolean selected, boolean focus) {
                boolean unsaid = "".equals(value);
                super.getListCellRendererComponent(
                        list, unsaid ? unsaid(index < 0) : spoken(value), index, selected, focus);
                if (unsaid && !selected) {
                    setForeground(skin.quiet());
                }
                return this;
            }
        });
        box.addActionListener(event -> typed.accept(String.valueOf(box.getSelectedItem())));
        return box;
    }

    /** A yes or no of the plan in plain words. */
    private static Object spoken(Object word) {
        return "true".equals(word) ? "yes" : "false".equals(word) ? "no" : word;
    }

    /** What holds while nothing is said: in the closed box as an empty field shows it, in the open list told from the word itself. */
    private String unsaid(boolean isClosed) {
        if (row.otherwise().isEmpty()) {
            return isClosed ? " " : "not said";
        }
        return (isClosed ? "" : "default: ") + spoken(row.otherwise());
    }

    String id() {
        return row.id();
    }

    boolean isWrong() {
        return row.isMissing() || row.said().stream().anyMatch(FormPage.Said::isError);
    }

    void focus() {
        input.requestFocusInWindow();
    }

    boolean holds(Component component) {
        return component == input;
    }

    /** Shows everything but what was typed, which is the operator's. */
    void show(FormPage.Row newRow) {
        row = newRow;
        String converted = row.converted().isEmpty() ? "" : " = " + row.converted();
        unit.setText(row.field().unitSign() + converted);
        if (input instanceof JTextField) {
            input.putClientProperty("JTextField.placeholderText", row.otherwise());
        }
        input.putClientProperty("JComponent.outline", isWrong() && !row.isMissing() ? "error" : null);
        String sentences = row.said().stream()
                .map(said -> (said.isError() ? Tone.BAD : Tone.WARN).sign() + " " + said.sentence())
                .collect(Collectors.joining("\n"));
        wrong.say(sentences);
        input.getAccessibleContext().setAccessibleName(row.field().label() + " (" + row.id() + ")");
        input.getAccessibleContext().setAccessibleDescription(row.spoken() + " " + sentences);
        input.repaint();
    }

    @Override
    protected void dress() {
        type(name, scale.plain(14), skin.ink());
        input.setFont(scale.plain(14));
        type(unit, scale.plain(13), skin.quiet());
        wrong.dress(skin.ink(), scale.bold(13));
        Dimension natural = new Dimension(0, scale.type(28));
        for (JComponent part : List.of(name, input, unit)) {
            part.setPreferredSize(natural);
            part.setMinimumSize(natural);
        }
        name.setBorder(scale.margin(0, 0, 0, 8));
        unit.setBorder(scale.margin(0, 8, 0, 0));
        setBorder(scale.margin(0, 0, 5, 0));
    }

    /** A part of the line takes its share of the width, whatever it holds. */
    private void place(JComponent part, double share) {
        GridBagConstraints place = new GridBagConstraints();
        place.fill = GridBagConstraints.BOTH;
        place.weightx = share;
        place.weighty = 1;
        line.add(part, place);
    }
}
