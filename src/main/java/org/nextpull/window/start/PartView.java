package org.nextpull.window.start;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.swing.AbstractButton;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.nextpull.window.look.EvenColumns;
import org.nextpull.window.look.Prose;
import org.nextpull.window.look.StackLayout;
import org.nextpull.window.look.StyledPanel;
import org.nextpull.window.look.Tone;

/** One section of the form: its head, and its fields in as many columns as there is room for. */
final class PartView extends StyledPanel {
    private static final long serialVersionUID = 1;
    private static final double COLUMN = 380;

    private final EvenColumns columns = new EvenColumns();
    private final JPanel head = new JPanel(new BorderLayout());
    private final JPanel fields = new JPanel(columns);
    private final JLabel title = new JLabel();
    private final JLabel purpose = new JLabel();
    private final Prose wrong = new Prose("What is wrong with the section");
    private final transient List<RowView> rows = new ArrayList<>();
    private final transient List<AbstractButton> buttons = new ArrayList<>();

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
        super(new StackLayout());
        setOpaque(false);
        buttons(part, change);
        JPanel ends = new JPanel(new FlowLayout(FlowLayout.RIGHT, 6, 0));
        buttons.forEach(ends::add);
        head.add(title, BorderLayout.WEST);
        head.add(purpose, BorderLayout.CENTER);
        head.add(ends, BorderLayout.EAST);
        List.of(head, ends, fields).forEach(bare -> bare.setOpaque(false));
        add(head);
        add(wrong);
        add(fields);
        for (FormPage.Row row : part.rows()) {
            RowView view = makeRow.apply(row);
            rows.add(view);
            fields.add(view);
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
                buttons.add(button(
                        "Add a " + part.section().title().toLowerCase(Locale.ROOT),
                        () -> change.accept(form -> form.added(part.section().name()))));
                if (part.isPresent()) {
                    buttons.add(button("Remove", () -> change.accept(form -> form.switched(table, false))));
                }
            }
            default -> {
                // nothing to switch
            }
        }
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
    protected void dress() {
        type(title, scale.bold(18), skin.ink());
        type(purpose, scale.plain(13), skin.quiet());
        wrong.dress(skin.ink(), scale.bold(13));
        buttons.forEach(button -> button.setFont(scale.plain(13)));
        rows.forEach(row -> row.style(skin, scale));
        head.setBorder(scale.margin(0, 0, 4, 0));
        title.setBorder(scale.margin(0, 0, 0, 14));
        title.setPreferredSize(null);
        title.setPreferredSize(new Dimension(title.getPreferredSize().width, scale.type(30)));
        columns.size(scale.type(COLUMN), scale.space(24));
        setBorder(scale.margin(0, 0, 12, 0));
    }
}
