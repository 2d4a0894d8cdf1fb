package org.nextpull.window.past;

import java.awt.BorderLayout;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTextField;
import javax.swing.ScrollPaneConstants;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import org.nextpull.chart.SweepPlot;
import org.nextpull.window.look.Prose;
import org.nextpull.window.look.SharedSplit;
import org.nextpull.window.look.Skin;
import org.nextpull.window.look.Stack;
import org.nextpull.window.look.Styled;
import org.nextpull.window.look.TypeScale;
import org.nextpull.window.page.ChartCanvas;
import org.nextpull.window.page.Work;

/** The page: the sessions left, the one that is selected right. */
final class PastView extends JPanel implements Styled {
    private static final long serialVersionUID = 1;

    private final JLabel findName = new JLabel("Find (Ctrl F)");
    private final JTextField find = new JTextField();
    private final JLabel count = new JLabel(" ");
    private final PastTable table = new PastTable();
    private final JScrollPane tablePane = new JScrollPane(table);
    private final Prose heading = new Prose("Session");
    private final Prose text = new Prose("What the session says");
    private final JScrollPane textPane = new JScrollPane(
            text, ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
    private final ChartCanvas sweep;
    private final JPanel left = new JPanel(new BorderLayout(0, 6));
    private final JPanel words = new JPanel(new Stack());
    private final SharedSplit right;
    private final SharedSplit halves;

    /**
     * The view.
     *
     * @param search is given the words to look for
     * @param selected is given the session that is selected
     */
    PastView(Work work, Consumer<String> search, Consumer<PastPresenter.Row> selected) {
        super(new BorderLayout());
        sweep = new ChartCanvas(work, "Response against the factor", "The sweep of the session will be drawn here.");
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
        JPanel finding = new JPanel(new BorderLayout(8, 0));
        finding.setOpaque(false);
        finding.add(findName, BorderLayout.WEST);
        finding.add(find, BorderLayout.CENTER);
        left.add(finding, BorderLayout.NORTH);
        left.add(tablePane, BorderLayout.CENTER);
        left.add(count, BorderLayout.SOUTH);
        words.add(heading);
        words.add(textPane, Stack.Row.stretching(1));
        right = new SharedSplit(JSplitPane.VERTICAL_SPLIT, words, sweep, 0.54);
        halves = new SharedSplit(JSplitPane.HORIZONTAL_SPLIT, left, right, 0.53);
        add(halves, BorderLayout.CENTER);
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

    void show(List<PastPresenter.Row> rows, String said) {
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

    void show(PastPresenter.Details session) {
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
    public void style(Skin skin, TypeScale scale) {
        int gap = scale.space(14);
        for (JComponent part : List.of(this, left, words)) {
            part.setBackground(skin.ground());
        }
        left.setBorder(BorderFactory.createEmptyBorder(gap / 2, gap, gap / 3, gap / 2));
        words.setBorder(BorderFactory.createEmptyBorder(gap / 2, gap / 2, 0, gap));
        halves.style(skin, scale);
        right.style(skin, scale);
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
}
