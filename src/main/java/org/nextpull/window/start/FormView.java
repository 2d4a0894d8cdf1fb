package org.nextpull.window.start;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.nextpull.window.look.ScrolledPanel;
import org.nextpull.window.look.StackLayout;

/** All sections of the form below each other. What is typed belongs to the operator: a new page never changes it. */
final class FormView extends ScrolledPanel {
    private static final long serialVersionUID = 1;

    private final transient Consumer<Function<PlanForm, PlanForm>> change;
    private final transient Consumer<FormPage.Row> focused;
    private final transient List<PartView> parts = new ArrayList<>();
    private final transient List<String> built = new ArrayList<>();

    /**
     * The form.
     *
     * @param change is given what the operator changes
     * @param focused is told which field has the focus
     */
    FormView(Consumer<Function<PlanForm, PlanForm>> change, Consumer<FormPage.Row> focused) {
        super(new StackLayout(), 30);
        this.change = change;
        this.focused = focused;
    }

    /**
     * Shows a page.
     *
     * @param isOther whether it is of another plan, so that what was typed does not count
     */
    void show(FormPage page, boolean isOther) {
        List<String> wanted = new ArrayList<>();
        page.parts().forEach(part -> {
            wanted.add(part.table() + part.isPresent());
            part.rows().forEach(row -> wanted.add(row.id()));
        });
        if (isOther || !wanted.equals(built)) {
            build(page);
            built.clear();
            built.addAll(wanted);
        } else {
            for (int index = 0; index < parts.size(); index++) {
                parts.get(index).show(page.parts().get(index));
            }
        }
        revalidate();
        repaint();
    }

    private void build(FormPage page) {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        Optional<String> focus = rows().stream()
                .filter(row -> owner != null && row.holds(owner))
                .map(RowView::id)
                .findFirst();
        removeAll();
        parts.clear();
        for (FormPage.Part part : page.parts()) {
            PartView view = new PartView(part, this::row, change);
            parts.add(view);
            add(view);
            view.style(skin, scale);
        }
        focus.flatMap(this::row).ifPresent(RowView::focus);
    }

    private RowView row(FormPage.Row row) {
        return new RowView(row, text -> change.accept(form -> form.typed(row.table(), row.field(), text)), focused);
    }

    private List<RowView> rows() {
        return parts.stream().flatMap(part -> part.rows().stream()).toList();
    }

    private Optional<RowView> row(String id) {
        return rows().stream().filter(row -> row.id().equals(id)).findFirst();
    }

    /** Puts the focus on the next field that is wrong, after the one that has it. */
    void focusNextWrong() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        List<RowView> rows = rows();
        int here = -1;
        for (int index = 0; index < rows.size(); index++) {
            here = owner != null && rows.get(index).holds(owner) ? index : here;
        }
        for (int step = 1; step <= rows.size(); step++) {
            RowView row = rows.get((here + step) % rows.size());
            if (row.isWrong()) {
                row.focus();
                return;
            }
        }
    }

    @Override
    protected void dress() {
        setBackground(skin.ground());
        setBorder(scale.margin(7, 14, 14, 14));
        parts.forEach(part -> part.style(skin, scale));
    }
}
