package org.nextpull.window.start;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.FlowLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import org.nextpull.report.Shown;
import org.nextpull.window.look.Prose;
import org.nextpull.window.look.ScrollView;
import org.nextpull.window.look.SharedSplit;
import org.nextpull.window.look.StackLayout;
import org.nextpull.window.look.StyledPanel;
import org.nextpull.window.look.Tone;

/** The page: the plan left, with a line that explains the field in hand; the source right; the start below it. */
final class StartView extends StyledPanel {
    private static final long serialVersionUID = 1;

    private final JLabel plan = new JLabel();
    private final transient List<JButton> buttons = new ArrayList<>();
    private final FormView form;
    private final ScrollView formPane;
    private final Prose hint = new Prose("About this field");
    private final Prose loose = new Prose("Beside the fields");
    private final JPanel looseButtons = new JPanel(new FlowLayout(FlowLayout.LEFT, 6, 0));
    private final SourceView source;
    private final JButton start = new JButton("Start the session (Ctrl Enter)");
    private final Prose ready = new Prose("Whether the session can start");
    private final transient Consumer<Function<PlanForm, PlanForm>> change;
    private final StackLayout stack = new StackLayout();
    private final JPanel head = new JPanel(new BorderLayout());
    private final JPanel left = new JPanel(stack);
    private final JPanel right = new JPanel(new StackLayout());
    private final SharedSplit halves;

    /** What the page can be asked for. */
    record Wishes(
            Consumer<Function<PlanForm, PlanForm>> change,
            Runnable open,
            Runnable save,
            Runnable fresh,
            Runnable ports,
            Consumer<SourceView.Choice> watch,
            Runnable start) {}

    StartView(Wishes wishes) {
        super(new BorderLayout());
        change = wishes.change();
        form = new FormView(change, row -> hint(row.spoken()));
        formPane = ScrollView.upright(form);
        source = new SourceView(wishes.ports(), wishes.watch());
        plan.getAccessibleContext().setAccessibleName("Plan");
        buttons.add(button("Open (Ctrl O)", wishes.open()));
        buttons.add(button("Save as (Ctrl S)", wishes.save()));
        buttons.add(button("New (Ctrl N)", wishes.fresh()));
        JPanel row = new JPanel(new FlowLayout(FlowLayout.RIGHT, 6, 0));
        row.setOpaque(false);
        buttons.forEach(row::add);
        head.setOpaque(false);
        head.add(plan, BorderLayout.CENTER);
        head.add(row, BorderLayout.EAST);
        left.add(head);
        left.add(loose);
        left.add(looseButtons);
        left.add(formPane, StackLayout.Row.stretching(1));
        left.add(hint);
        right.add(source, StackLayout.Row.stretching(1));
        right.add(ready);
        right.add(start);
        start.addActionListener(event -> wishes.start().run());
        halves = new SharedSplit(JSplitPane.HORIZONTAL_SPLIT, left, right, 0.62);
        add(halves, BorderLayout.CENTER);
        looseButtons.setOpaque(false);
        getAccessibleContext().setAccessibleName("Start");
        hint("Every field tells here what it is for. Tab goes from field to field, F8 to the next that is wrong.");
    }

    private void hint(String sentences) {
        hint.say(sentences);
        revalidate();
    }

    /** No field has the focus at first: the digit that shows a page must not be typed into one. */
    void focus() {
        buttons.get(0).requestFocusInWindow();
    }

    SourceView source() {
        return source;
    }

    FormView form() {
        return form;
    }

    /** Shows the form; with {@code isOther} that of another plan. */
    void show(FormPage page, boolean isOther) {
        String name = page.file().orElse("A new plan");
        String last = name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1);
        plan.setText((page.isChanged() ? "Changed: " : page.file().isPresent() ? "" : "Not written: ") + last);
        plan.getAccessibleContext().setAccessibleDescription(name);
        plan.setToolTipText(name + ". " + page.kept());
        form.show(page, isOther);
        StringBuilder beside = new StringBuilder();
        looseButtons.removeAll();
        for (FormPage.Loose one : page.loose()) {
            beside.append(beside.isEmpty() ? "" : "\n")
                    .append((one.said().isError() ? Tone.BAD : Tone.WARN).sign())
                    .append(' ')
                    .append(one.said().sentence());
            one.removable().ifPresent(this::takeOut);
        }
        loose.say(beside.toString());
        looseButtons.setVisible(looseButtons.getComponentCount() > 0);
        restyleLoose();
        long errors = page.errors();
        ready.say(
                errors == 0
                        ? Tone.GOOD.sign() + " The plan can be used. " + page.kept()
                        : Tone.PLAIN.sign() + " " + todo(errors, page.missing()) + " F8: next.");
        start.setEnabled(errors == 0);
        revalidate();
        repaint();
    }

    /** A new plan is not greeted with errors: it says which fields come next. */
    private static String todo(long errors, List<String> missing) {
        return missing.size() == errors
                ? "Still to fill in: " + String.join(", ", missing) + "."
                : Shown.count(errors, "field") + " to fill in or fix.";
    }

    private void takeOut(String key) {
        looseButtons.add(button("Take out " + key, () -> change.accept(form -> form.without(key))));
    }

    private void restyleLoose() {
        for (Component button : looseButtons.getComponents()) {
            button.setFont(scale.plain(13));
        }
    }

    @Override
    protected void dress() {
        ground(left, right);
        left.setBorder(scale.margin(7, 14, 7, 0));
        right.setBorder(scale.margin(0, 14, 7, 14));
        stack.gap(scale.space(7));
        halves.style(skin, scale);
        type(plan, scale.bold(16), skin.ink());
        buttons.forEach(button -> button.setFont(scale.plain(13)));
        hint.dress(skin.ink(), scale.plain(14));
        loose.dress(skin.ink(), scale.bold(13));
        ready.dress(skin.ink(), scale.plain(13));
        start.setFont(scale.bold(18));
        formPane.setBorder(BorderFactory.createMatteBorder(1, 0, 1, 0, skin.line()));
        formPane.style(skin, scale);
        restyleLoose();
        source.style(skin, scale);
    }
}
