package org.nextpull.window.past;

import java.awt.BorderLayout;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import javax.swing.JTextField;
import org.nextpull.chart.SweepPlot;
import org.nextpull.window.look.Prose;
import org.nextpull.window.look.ScrollView;
import org.nextpull.window.look.SharedSplit;
import org.nextpull.window.look.StackLayout;
import org.nextpull.window.look.StyledPanel;
import org.nextpull.window.look.Typing;
import org.nextpull.window.page.ChartCanvas;
import org.nextpull.window.page.Work;

/** The page: the sessions left, the one that is selected right. */
final class PastView extends StyledPanel {
    private static final long serialVersionUID = 1;

    private final JLabel findName = new JLabel("Find (Ctrl F)");
    private final JTextField find = new JTextField();
    private final JLabel count = new JLabel(" ");
    private final PastTable table = new PastTable();
    private final ScrollView tablePane = ScrollView.of(table);
    private final Prose heading = new Prose("Session");
    private final Prose text = new Prose("What the session says");
    private final ScrollView textPane = ScrollView.upright(text);
    private final ChartCanvas sweep;
    private final JPanel left = new JPanel(new BorderLayout(0, 6));
    private final JPanel words = new JPanel(new StackLayout());
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
        Typing.in(find, search);
        find.addActionListener(event -> table.requestFocusInWindow());
        table.getSelectionModel().addListSelectionListener(event -> {
            if (!event.getValueIsAdjusting()) {
                table.selected().ifPresent(selected);
            }
        });
        text.setFocusable(true);
        count.getAccessibleContext().setAccessibleName("How many sessions");
        JPanel finding = new JPanel(new BorderLayout(8, 0));
        finding.setOpaque(false);
        finding.add(findName, BorderLayout.WEST);
        finding.add(find, BorderLayout.CENTER);
        left.add(finding, BorderLayout.NORTH);
        left.add(tablePane, BorderLayout.CENTER);
        left.add(count, BorderLayout.SOUTH);
        words.add(heading);
        words.add(textPane, StackLayout.Row.stretching(1));
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
    protected void dress() {
        ground(left, words);
        left.setBorder(scale.margin(7, 14, 5, 7));
        words.setBorder(scale.margin(7, 7, 0, 14));
        halves.style(skin, scale);
        right.style(skin, scale);
        type(findName, scale.plain(14), skin.ink());
        find.setFont(scale.plain(14));
        type(count, scale.plain(13), skin.quiet());
        heading.dress(skin.ink(), scale.bold(16));
        text.dress(skin.ink(), scale.plain(14));
        textPane.style(skin, scale);
        tablePane.style(skin, scale);
        sweep.style(skin, scale);
    }
}
