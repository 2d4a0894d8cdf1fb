package org.nextpull.window.past;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.ScrollPaneConstants;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import org.nextpull.chart.SweepPlot;
import org.nextpull.window.look.Look;
import org.nextpull.window.look.Prose;
import org.nextpull.window.look.Skin;
import org.nextpull.window.look.Styled;
import org.nextpull.window.look.TypeScale;
import org.nextpull.window.page.ChartCanvas;
import org.nextpull.window.work.Work;

/** The page: the sessions left, the one that is selected right. */
final class PastView extends JPanel implements Styled {
    private static final long serialVersionUID = 1;
    private static final double LEFT = 0.53;
    private static final double CHART = 0.46;

    private final JLabel findName = new JLabel("Find (Ctrl F)");
    private final JTextField find = new JTextField();
    private final JLabel count = new JLabel(" ");
    private final PastTable table = new PastTable();
    private final JScrollPane tablePane = new JScrollPane(table);
    private final Prose heading = new Prose("Session");
    private final Prose text = new Prose("What the session says");
    private final JScrollPane textPane = new JScrollPane(
            text, ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
    private final ChartCanvas<SweepPlot> sweep;
    private transient Skin skin = Skin.of(Look.plain());
    private transient TypeScale scale = TypeScale.of(1280, 720, Look.plain());

    /**
     * The view.
     *
     * @param search is given the words to look for
     * @param selected is given the session that is selected
     */
    PastView(Work work, Consumer<String> search, Consumer<PastRow> selected) {
        super(null);
        sweep = new ChartCanvas<>(
                work,
                "Response against the factor",
                "The sweep of the session will be drawn here.",
                (drawing, plot) -> drawing.charts().paint(plot, drawing.surface()));
        findName.setLabelFor(find);
        find.getAccessibleContext().setAccessibleName("Find");
        find.putClientProperty(
                "JTextField.placeholderText", "words in engine, fuel, plan, labels, notes, logs, advice");
        find.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent event) {
                search.accept(find.getText());
            }

            @Override
            public void removeUpdate(DocumentEvent event) {
                search.accept(find.getText());
            }

            @Override
            public void changedUpdate(DocumentEvent event) {
                // only attributes
            }
        });
        find.addActionListener(event -> table.requestFocusInWindow());
        table.getSelectionModel().addListSelectionListener(event -> {
            if (!event.getValueIsAdjusting()) {
                table.selected().ifPresent(selected);
            }
        });
        text.setFocusable(true);
        count.getAccessibleContext().setAccessibleName("How many sessions");
        for (JScrollPane pane : List.of(tablePane, textPane)) {
            pane.setBorder(BorderFactory.createEmptyBorder());
        }
        List.<JComponent>of(findName, find, count, tablePane, heading, textPane, sweep)
                .forEach(this::add);
        getAccessibleContext().setAccessibleName("Past sessions");
    }

    PastTable table() {
        return table;
    }

    String words() {
        return find.getText();
    }

    void focusFind() {
        find.requestFocusInWindow();
        find.selectAll();
    }

    void show(List<PastRow> rows, String said) {
        if (!rows.equals(table.shown())) {
            table.show(rows);
        }
        count.setText(said);
        if (rows.isEmpty()) {
            heading.say("");
            text.say("");
            sweep.show(Optional.empty(), "");
        }
    }

    void show(PastSession session) {
        heading.say(session.heading());
        text.say(session.text());
        sweep.show(session.sweep(), session.sweep().map(SweepPlot::title).orElse(""));
        revalidate();
    }

    void say(String sentence) {
        heading.say(sentence);
        text.say("");
        revalidate();
    }

    @Override
    public void style(Skin newSkin, TypeScale newScale) {
        skin = newSkin;
        scale = newScale;
        setBackground(skin.ground());
        findName.setFont(scale.plain(14));
        findName.setForeground(skin.ink());
        find.setFont(scale.plain(14));
        count.setFont(scale.plain(13));
        count.setForeground(skin.quiet());
        heading.dress(skin.ink(), scale.bold(16));
        text.dress(skin.ink(), scale.plain(14));
        textPane.getViewport().setBackground(skin.ground());
        tablePane.getViewport().setBackground(skin.ground());
        table.style(skin, scale);
        sweep.style(skin, scale);
        revalidate();
        repaint();
    }

    @Override
    public void doLayout() {
        int gap = scale.space(14);
        int line = scale.type(28);
        int left = (int) (getWidth() * LEFT);
        int y = gap / 2;
        int name = findName.getPreferredSize().width;
        findName.setBounds(gap, y, name, line);
        find.setBounds(gap + name + gap / 2, y, left - name - 2 * gap - gap / 2, line);
        y += line + gap / 2;
        int foot = scale.type(24);
        tablePane.setBounds(gap, y, left - 2 * gap, Math.max(0, getHeight() - y - foot - gap / 2));
        count.setBounds(gap, getHeight() - foot - gap / 3, left - 2 * gap, foot);
        int right = getWidth() - left - 2 * gap;
        y = gap / 2;
        int high = heading.heightAt(right);
        heading.setBounds(left + gap, y, right, high);
        y += high + gap / 2;
        int chart = (int) (getHeight() * CHART);
        textPane.setBounds(left + gap, y, right, Math.max(0, getHeight() - y - chart));
        sweep.setBounds(left + gap / 2, getHeight() - chart, getWidth() - left - gap / 2, chart);
    }

    @Override
    protected void paintComponent(java.awt.Graphics graphics) {
        super.paintComponent(graphics);
        graphics.setColor(skin.line());
        graphics.fillRect((int) (getWidth() * LEFT), 0, Math.max(1, scale.space(1)), getHeight());
    }
}
