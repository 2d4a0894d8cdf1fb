package org.nextpull.window.start;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.swing.AbstractButton;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.nextpull.window.look.Look;
import org.nextpull.window.look.Prose;
import org.nextpull.window.look.Skin;
import org.nextpull.window.look.Stack;
import org.nextpull.window.look.Styled;
import org.nextpull.window.look.Tone;
import org.nextpull.window.look.TypeScale;

/** One section of the form: its head, and its fields in as many columns as there is room for. */
final class PartView extends JPanel implements Styled, Stack.Wide {
    private static final long serialVersionUID = 1;
    private static final double COLUMN = 380;

    private final JLabel title = new JLabel();
    private final JLabel purpose = new JLabel();
    private final Prose wrong = new Prose("What is wrong with the section");
    private final transient List<RowView> rows = new ArrayList<>();
    private final transient List<AbstractButton> buttons = new ArrayList<>();
    private transient TypeScale scale = TypeScale.of(1280, 720, Look.plain());

    /**
     * A section.
     *
     * @param part what it shows
     * @param makeRow makes the view of a field
     * @param change is given the changes of the form that its buttons stand for
     */
    PartView(
            FormPage.Part part,
            Function<FormPage.Row, RowView> makeRow,
            Consumer<Function<PlanForm, PlanForm>> change) {
        super(null);
        setOpaque(false);
        buttons(part, change);
        add(title);
        add(purpose);
        buttons.forEach(this::add);
        add(wrong);
        for (FormPage.Row row : part.rows()) {
            RowView view = makeRow.apply(row);
            rows.add(view);
            add(view);
        }
        show(part);
    }

    private void buttons(FormPage.Part part, Consumer<Function<PlanForm, PlanForm>> change) {
        String table = part.table();
        switch (part.section().presence()) {
            case SWITCHED -> {
                JCheckBox box = new JCheckBox("Use", part.isPresent());
                box.getAccessibleContext().setAccessibleName(part.title() + " in the plan");
                box.addActionListener(event -> change.accept(form -> form.switched(table, box.isSelected())));
                buttons.add(box);
            }
            case LISTED -> {
                button(
                        "Add a " + part.section().title().toLowerCase(java.util.Locale.ROOT),
                        () -> change.accept(form -> form.added(part.section().name())));
                if (part.isPresent()) {
                    button("Remove", () -> change.accept(form -> form.switched(table, false)));
                }
            }
            default -> {
                // nothing to switch
            }
        }
    }

    private void button(String text, Runnable action) {
        JButton button = new JButton(text);
        button.addActionListener(event -> action.run());
        buttons.add(button);
    }

    List<RowView> rows() {
        return rows;
    }

    void show(FormPage.Part part) {
        title.setText(part.title());
        purpose.setText(part.section().purpose());
        wrong.say(part.said().stream()
                .map(said -> (said.isError() ? Tone.BAD : Tone.WARN).sign() + " " + said.sentence())
                .collect(Collectors.joining("\n")));
        for (RowView view : rows) {
            part.rows().stream()
                    .filter(row -> row.id().equals(view.id()))
                    .findFirst()
                    .ifPresent(view::show);
        }
    }

    @Override
    public void style(Skin skin, TypeScale newScale) {
        scale = newScale;
        title.setFont(scale.bold(18));
        title.setForeground(skin.ink());
        purpose.setFont(scale.plain(13));
        purpose.setForeground(skin.quiet());
        wrong.dress(skin.ink(), scale.bold(13));
        buttons.forEach(button -> button.setFont(scale.plain(13)));
        rows.forEach(row -> row.style(skin, newScale));
    }

    @Override
    public int heightAt(int width) {
        return arrange(width, false);
    }

    @Override
    public void doLayout() {
        arrange(getWidth(), true);
    }

    /** Goes through all parts from the top, placing them when asked to, and gives the height that they take. */
    private int arrange(int width, boolean place) {
        int gap = scale.space(24);
        int head = scale.type(30);
        int across = title.getPreferredSize().width;
        if (place) {
            title.setBounds(0, 0, across, head);
        }
        across += scale.space(14);
        int right = width;
        for (AbstractButton button : buttons) {
            int wide = button.getPreferredSize().width;
            right -= wide;
            if (place) {
                button.setBounds(right, 0, wide, head);
            }
            right -= scale.space(8);
        }
        if (place) {
            purpose.setBounds(across, scale.type(2), Math.max(0, right - across), head);
        }
        int y = head + scale.space(4);
        int wrongHigh = wrong.heightAt(width);
        if (place) {
            wrong.setBounds(0, y, width, wrongHigh);
        }
        y += wrongHigh;
        int columns = Math.max(1, (width + gap) / (scale.type(COLUMN) + gap));
        int cell = (width - (columns - 1) * gap) / columns;
        for (int first = 0; first < rows.size(); first += columns) {
            int high = 0;
            for (int column = 0; column < columns && first + column < rows.size(); column++) {
                high = Math.max(high, rows.get(first + column).heightAt(cell));
            }
            for (int column = 0; place && column < columns && first + column < rows.size(); column++) {
                rows.get(first + column).setBounds(column * (cell + gap), y, cell, high);
            }
            y += high;
        }
        return y + scale.space(12);
    }
}
