package org.nextpull.window.start;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;
import org.nextpull.report.Shown;
import org.nextpull.window.look.Look;
import org.nextpull.window.look.Prose;
import org.nextpull.window.look.Skin;
import org.nextpull.window.look.Styled;
import org.nextpull.window.look.Tone;
import org.nextpull.window.look.TypeScale;

/** The page: the plan left, with a line that explains the field in hand; the source right; the start below it. */
final class StartView extends JPanel implements Styled {
    private static final long serialVersionUID = 1;
    private static final double LEFT = 0.62;

    private final JLabel plan = new JLabel();
    private final transient List<JButton> buttons = new ArrayList<>();
    private final FormView form;
    private final JScrollPane formPane;
    private final Prose hint = new Prose("About this field");
    private final Prose loose = new Prose("Beside the fields");
    private final JPanel looseButtons = new JPanel(new java.awt.FlowLayout(java.awt.FlowLayout.LEFT, 6, 0));
    private final SourceView source;
    private final JButton start = new JButton("Start the session (Ctrl Enter)");
    private final Prose ready = new Prose("Whether the session can start");
    private final transient Consumer<Function<PlanForm, PlanForm>> change;
    private transient Skin skin = Skin.of(Look.plain());
    private transient TypeScale scale = TypeScale.of(1280, 720, Look.plain());

    /** What the page can be asked for. */
    record Wishes(
            Consumer<Function<PlanForm, PlanForm>> change,
            Runnable open,
            Runnable save,
            Runnable fresh,
            Runnable ports,
            Consumer<SourceChoice> watch,
            Runnable start) {}

    StartView(Wishes wishes) {
        super(null);
        change = wishes.change();
        form = new FormView(change, row -> hint(row.spoken()));
        formPane = new JScrollPane(
                form, ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        source = new SourceView(wishes.ports(), wishes.watch());
        plan.getAccessibleContext().setAccessibleName("Plan");
        add(plan);
        button("Open (Ctrl O)", wishes.open());
        button("Save as (Ctrl S)", wishes.save());
        button("New (Ctrl N)", wishes.fresh());
        add(loose);
        add(looseButtons);
        add(formPane);
        add(hint);
        add(source);
        start.addActionListener(event -> wishes.start().run());
        add(start);
        add(ready);
        looseButtons.setOpaque(false);
        getAccessibleContext().setAccessibleName("Start");
        hint("Every field tells here what it is for. Tab goes from field to field, F8 to the next that is wrong.");
    }

    private void button(String text, Runnable action) {
        JButton button = new JButton(text);
        button.addActionListener(event -> action.run());
        buttons.add(button);
        add(button);
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
        restyleLoose();
        long errors = page.errors();
        ready.say(
                errors == 0
                        ? Tone.GOOD.sign() + " The plan can be used. " + page.kept()
                        : Tone.PLAIN.sign() + " " + Shown.count(errors, "field") + " to fill in or fix. F8: next.");
        start.setEnabled(errors == 0);
        revalidate();
        repaint();
    }

    private void takeOut(String key) {
        JButton button = new JButton("Take out " + key);
        button.addActionListener(event -> change.accept(form -> form.without(key)));
        looseButtons.add(button);
    }

    private void restyleLoose() {
        for (java.awt.Component button : looseButtons.getComponents()) {
            button.setFont(scale.plain(13));
        }
    }

    @Override
    public void style(Skin newSkin, TypeScale newScale) {
        skin = newSkin;
        scale = newScale;
        setBackground(skin.ground());
        plan.setFont(scale.bold(18));
        plan.setForeground(skin.ink());
        buttons.forEach(button -> button.setFont(scale.plain(13)));
        hint.dress(skin.ink(), scale.plain(14));
        loose.dress(skin.ink(), scale.bold(13));
        ready.dress(skin.ink(), scale.plain(13));
        start.setFont(scale.bold(18));
        formPane.setBorder(BorderFactory.createMatteBorder(1, 0, 1, 0, skin.line()));
        formPane.getViewport().setBackground(skin.ground());
        restyleLoose();
        form.style(skin, scale);
        source.style(skin, scale);
        revalidate();
        repaint();
    }

    @Override
    public void doLayout() {
        int gap = scale.space(14);
        int left = (int) (getWidth() * LEFT);
        int line = scale.type(30);
        int y = gap / 2;
        int x = left;
        for (int index = buttons.size() - 1; index >= 0; index--) {
            int wide = buttons.get(index).getPreferredSize().width;
            x -= wide + gap / 2;
            buttons.get(index).setBounds(x, y, wide, line);
        }
        plan.setBounds(gap, y, Math.max(0, x - 2 * gap), line);
        y += line + gap / 2;
        int besideHigh = loose.heightAt(left - 2 * gap);
        loose.setBounds(gap, y, left - 2 * gap, besideHigh);
        y += besideHigh;
        int takeOut = looseButtons.getComponentCount() == 0 ? 0 : line + gap / 2;
        looseButtons.setBounds(gap / 2, y, left - gap, takeOut);
        y += takeOut;
        int hintHigh = scale.type(62);
        formPane.setBounds(0, y, left, Math.max(0, getHeight() - y - hintHigh));
        hint.setBounds(gap, getHeight() - hintHigh + gap / 3, left - 2 * gap, hintHigh - gap / 3);
        int right = getWidth() - left - 2 * gap;
        int startHigh = scale.type(44);
        int readyHigh = ready.heightAt(right);
        int below = startHigh + readyHigh + gap + gap / 2;
        source.setBounds(left, 0, getWidth() - left, Math.max(0, getHeight() - below));
        ready.setBounds(left + gap, getHeight() - below + gap / 2, right, readyHigh);
        start.setBounds(left + gap, getHeight() - startHigh - gap / 2, right, startHigh);
    }

    @Override
    protected void paintComponent(java.awt.Graphics graphics) {
        super.paintComponent(graphics);
        graphics.setColor(skin.line());
        graphics.fillRect((int) (getWidth() * LEFT), 0, Math.max(1, scale.space(1)), getHeight());
    }
}
