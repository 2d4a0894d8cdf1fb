package org.nextpull.window.bench;

import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.nextpull.report.NextStep;
import org.nextpull.window.look.Digits;
import org.nextpull.window.look.Look;
import org.nextpull.window.look.Prose;
import org.nextpull.window.look.Skin;
import org.nextpull.window.look.Styled;
import org.nextpull.window.look.Tone;
import org.nextpull.window.look.TypeScale;

/** The next step in the largest print that fits. A stop turns ground and ink round; a wait has a broken bar at its side. */
final class LeadView extends JPanel implements Styled {
    private static final long serialVersionUID = 1;
    private static final int MOST_FIGURES = 3;
    private static final int TALLEST = 190;

    /** Room below which a number with its name is no longer read from a distance. */
    private static final int LEAST = 150;

    private final JLabel word = new JLabel();
    private final JLabel about = new JLabel();
    private final transient List<FigureRow> rows = new ArrayList<>();
    private final Prose because = new Prose("Because");
    private final Prose listen = new Prose("Listen");
    private final Prose whole = new Prose("Why, with the numbers");
    private transient Skin skin = Skin.of(Look.plain());
    private transient TypeScale scale = TypeScale.of(1280, 720, Look.plain());
    private NextStep.Kind kind = NextStep.Kind.NOTHING;

    /** A number with what stands beside it. */
    private record FigureRow(Digits number, JLabel name, JLabel change) {
        void show(boolean shown) {
            List.of(number, name, change).forEach(part -> part.setVisible(shown));
        }
    }

    LeadView() {
        super(null);
        getAccessibleContext().setAccessibleName("Next step");
        word.getAccessibleContext().setAccessibleName("What to do");
        about.getAccessibleContext().setAccessibleName("What for");
        List.of(word, about, because, listen, whole).forEach(this::add);
        for (int index = 0; index < MOST_FIGURES; index++) {
            FigureRow row = new FigureRow(new Digits(), new JLabel(), new JLabel());
            List.of(row.number(), row.name(), row.change()).forEach(this::add);
            row.show(false);
            rows.add(row);
        }
    }

    void show(NextStep lead) {
        kind = lead.kind();
        word.setText(lead.word().toUpperCase(java.util.Locale.ROOT));
        word.getAccessibleContext().setAccessibleDescription(lead.word());
        about.setText(lead.about());
        for (int index = 0; index < rows.size(); index++) {
            FigureRow row = rows.get(index);
            boolean has = index < lead.figures().size();
            row.show(has);
            if (has) {
                show(row, lead.figures().get(index));
            }
        }
        because.say(lead.because());
        listen.say(lead.listen().orElse(""));
        whole.say(lead.whole().equals(lead.because()) ? "" : lead.whole());
        getAccessibleContext().setAccessibleDescription(lead.spoken());
        dress();
    }

    private void show(FigureRow row, NextStep.Figure figure) {
        row.number().say(figure.number(), ink());
        row.number().getAccessibleContext().setAccessibleName("Next " + figure.name());
        row.name().setText(figure.unit().isEmpty() ? figure.name() : figure.unit() + " " + figure.name());
        row.change().setText(figure.change());
    }

    @Override
    public void style(Skin newSkin, TypeScale newScale) {
        skin = newSkin;
        scale = newScale;
        dress();
    }

    private boolean isTurned() {
        return kind == NextStep.Kind.STOP;
    }

    private Color ink() {
        return isTurned() ? skin.ground() : skin.ink();
    }

    private void dress() {
        setBackground(isTurned() ? skin.ink() : skin.ground());
        boolean loud = kind == NextStep.Kind.STOP || kind == NextStep.Kind.WAIT;
        word.setFont(scale.bold(loud ? 84 : 40));
        word.setForeground(ink());
        about.setFont(scale.plain(18));
        about.setForeground(ink());
        for (FigureRow row : rows) {
            row.number().say(row.number().getText(), ink());
            row.name().setFont(scale.bold(22));
            row.change().setFont(scale.plain(18));
            List.of(row.name(), row.change()).forEach(part -> part.setForeground(ink()));
        }
        because.dress(ink(), scale.bold(20));
        listen.dress(ink(), scale.bold(20));
        whole.dress(isTurned() ? skin.ground() : skin.quiet(), scale.plain(13));
        revalidate();
        repaint();
    }

    /** The sentences stand at the foot, the word at the head, and the numbers take what is between; where that is little, only the long reason gives way. */
    @Override
    public void doLayout() {
        int left = scale.space(34);
        int right = scale.space(16);
        int width = Math.max(10, getWidth() - left - right);
        int gap = scale.space(10);
        int from = head(left, right) + gap;
        long numbers = rows.stream().filter(row -> row.number().isVisible()).count();
        boolean fits = foot(left, width, true) - gap - from >= numbers * scale.space(LEAST);
        figures(left, from, width, foot(left, width, fits) - gap - from);
    }

    /** Lays the sentences from the foot upward and gives the place above them. */
    private int foot(int left, int width, boolean withWhole) {
        int gap = scale.space(10);
        int y = getHeight() - gap;
        for (Prose prose : List.of(whole, listen, because)) {
            int height = prose == whole && !withWhole ? 0 : prose.heightAt(width);
            y -= height;
            prose.setBounds(left, y, width, height);
            y -= height > 0 ? gap : 0;
        }
        return y;
    }

    /** Lays the word, with what it is for beside it or below, and gives the place below them. */
    private int head(int left, int right) {
        int top = scale.space(8);
        int high = word.getPreferredSize().height;
        int wide = Math.min(getWidth() - left - right, word.getPreferredSize().width);
        word.setBounds(left, top, wide, high);
        int beside = left + wide + scale.space(14);
        int line = about.getPreferredSize().height;
        if (about.getPreferredSize().width <= getWidth() - beside - right) {
            about.setBounds(beside, top + ascent(word) - ascent(about), getWidth() - beside - right, line);
            return top + high;
        }
        about.setBounds(left, top + high, getWidth() - left - right, line);
        return top + high + line;
    }

    private static int ascent(JLabel label) {
        FontMetrics metrics = label.getFontMetrics(label.getFont());
        return metrics.getAscent() + (label.getPreferredSize().height - metrics.getHeight()) / 2;
    }

    private void figures(int left, int top, int width, int height) {
        List<FigureRow> shown =
                rows.stream().filter(row -> row.number().isVisible()).toList();
        if (shown.isEmpty() || height < 10) {
            return;
        }
        int gap = scale.space(16);
        int air = scale.space(8);
        int line = rows.get(0).name().getPreferredSize().height;
        int each = (height - gap * (shown.size() - 1)) / shown.size() - line - air;
        int tall = Math.max(10, Math.min(each, scale.space(TALLEST)));
        for (FigureRow row : shown) {
            tall = Math.min(tall, (int) (100.0 * width / row.number().widthAt(100)));
        }
        int needed = (tall + air + line) * shown.size() + gap * (shown.size() - 1);
        int y = top + Math.max(0, (height - needed) / 2);
        for (FigureRow row : shown) {
            row.number().setBounds(left, y, row.number().widthAt(tall), tall);
            below(row, left, y + tall + air);
            y += tall + air + line + gap;
        }
    }

    /** Name and change stand below the number, on one line. */
    private void below(FigureRow row, int left, int y) {
        int wide = row.name().getPreferredSize().width;
        int high = row.name().getPreferredSize().height;
        row.name().setBounds(left, y, wide, high);
        int beside = left + wide + scale.space(14);
        int lower = ascent(row.name()) - ascent(row.change());
        row.change()
                .setBounds(
                        beside,
                        y + lower,
                        Math.max(1, getWidth() - beside),
                        row.change().getPreferredSize().height);
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
                g.setColor(skin.tone(Tone.WARN));
                for (int y = 0; y < high; y += 2 * bar) {
                    g.fillRect(0, y, bar, bar);
                }
            }
            case STOP, NOTHING -> {
                g.setColor(skin.quiet());
                g.fillRect(0, 0, bar, high);
            }
        }
    }
}
