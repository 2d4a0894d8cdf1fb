package org.nextpull.window.compared;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.GridLayout;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.ListSelectionModel;
import javax.swing.ScrollPaneConstants;
import org.nextpull.app.LabelledLog;
import org.nextpull.chart.DifferencePlot;
import org.nextpull.chart.OverlayPlot;
import org.nextpull.window.look.Prose;
import org.nextpull.window.look.SharedSplit;
import org.nextpull.window.look.Skin;
import org.nextpull.window.look.Stack;
import org.nextpull.window.look.Styled;
import org.nextpull.window.look.TypeScale;
import org.nextpull.window.page.ChartCanvas;
import org.nextpull.window.page.KeyCommand;
import org.nextpull.window.page.PlainTable;
import org.nextpull.window.page.Work;

/** The page: what is compared and the verdict left, with what it rests on and its numbers; the curves right. */
final class ComparedView extends JPanel implements Styled {
    private static final long serialVersionUID = 1;
    private static final int MOST_ROWS = 4;

    /** Height of what the verdict rests on against that of the table. */
    private static final double BASIS = 0.35;

    private final JLabel title = new JLabel("Compared");
    private final JLabel plan = new JLabel(" ");
    private final DefaultListModel<String> model = new DefaultListModel<>();
    private final JList<String> list = new JList<>(model);
    private final JScrollPane listPane = new JScrollPane(list);
    private final Prose verdict = new Prose("Verdict");
    private final Prose basis = new Prose("What the verdict rests on");
    private final JScrollPane basisPane = pane(basis);
    private final RowTable table = new RowTable();
    private final JScrollPane tablePane = pane(table);
    private final ChartCanvas curves;
    private final ChartCanvas difference;
    private transient ComparedPresenter.Page page = ComparedPresenter.Page.saying(List.of());
    private int shown;
    private final Stack stack = new Stack();
    private final JPanel left = new JPanel(stack);
    private final JPanel buttons = new JPanel(new GridLayout(0, 2, 6, 4));
    private final SharedSplit charts;
    private final SharedSplit halves;
    private int line = 24;

    ComparedView(Work work) {
        super(new BorderLayout());
        curves = new ChartCanvas(work, "Mean curves", "Mean curves over speed will be drawn here.");
        difference = new ChartCanvas(work, "Difference over speed", "The difference over speed will be drawn here.");
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.getAccessibleContext().setAccessibleName("What is compared");
        plan.getAccessibleContext().setAccessibleName("Plan of the comparison");
        listPane.setBorder(BorderFactory.createEmptyBorder());
        basis.setFocusable(true);
        JPanel head = new JPanel(new BorderLayout(14, 0));
        head.setOpaque(false);
        head.add(title, BorderLayout.WEST);
        head.add(plan, BorderLayout.CENTER);
        buttons.setOpaque(false);
        left.add(head);
        left.add(buttons);
        left.add(listPane);
        left.add(verdict);
        left.add(basisPane, new Stack.Row(1, BASIS, 0));
        left.add(tablePane, Stack.Row.stretching(1));
        charts = new SharedSplit(JSplitPane.VERTICAL_SPLIT, curves, difference, 0.5);
        halves = new SharedSplit(JSplitPane.HORIZONTAL_SPLIT, left, charts, 0.47);
        add(halves, BorderLayout.CENTER);
        getAccessibleContext().setAccessibleName("Comparison");
    }

    private static JScrollPane pane(JComponent inside) {
        JScrollPane pane = new JScrollPane(
                inside,
                ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
                ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        pane.setBorder(BorderFactory.createEmptyBorder());
        return pane;
    }

    /** A button for each key of the page. */
    void buttons(List<KeyCommand> keys) {
        for (KeyCommand key : keys) {
            JButton button = new JButton(key.what().substring(0, 1).toUpperCase(Locale.ROOT)
                    + key.what().substring(1) + " (" + key.shown() + ")");
            button.addActionListener(event -> key.action().run());
            buttons.add(button);
        }
    }

    /** Shows what is to be compared. */
    void show(List<LabelledLog> contenders, String planName) {
        int before = list.getSelectedIndex();
        model.clear();
        contenders.forEach(one -> model.addElement(one.shown()));
        sizeList();
        list.setSelectedIndex(Math.min(Math.max(0, before), contenders.size() - 1));
        plan.setText(planName.isBlank() ? "under the plan of the first session" : "under " + planName);
        plan.getAccessibleContext().setAccessibleDescription(plan.getText());
        revalidate();
    }

    /** As high as its lines, up to some. */
    private void sizeList() {
        int lines = Math.max(1, Math.min(MOST_ROWS, model.size()));
        listPane.setPreferredSize(new Dimension(10, line * lines + 4));
    }

    /** Place of the selected one; below 0 where there is none. */
    int selected() {
        return list.getSelectedIndex();
    }

    void show(ComparedPresenter.Page newPage) {
        page = newPage;
        shown = 0;
        verdict.say(String.join("\n", page.verdicts()));
        basis.say(String.join("\n", page.basis()));
        curves.show(page.curves(), page.curves().map(OverlayPlot::title).orElse(""));
        showLabel();
        revalidate();
        repaint();
    }

    /** Shows the difference of the next label. */
    void nextLabel() {
        if (!page.labels().isEmpty()) {
            shown = (shown + 1) % page.labels().size();
            showLabel();
        }
    }

    private void showLabel() {
        Optional<DifferencePlot> plot = shown < page.differences().size()
                ? Optional.of(page.differences().get(shown))
                : Optional.empty();
        difference.show(plot, plot.map(DifferencePlot::title).orElse(""));
        if (shown < page.labels().size()) {
            table.show(page.labels().get(shown), page.rows().get(shown));
        } else {
            table.show("this", List.of());
        }
    }

    void focus() {
        list.requestFocusInWindow();
    }

    @Override
    public void style(Skin skin, TypeScale scale) {
        int gap = scale.space(14);
        setBackground(skin.ground());
        left.setBackground(skin.ground());
        left.setBorder(BorderFactory.createEmptyBorder(gap / 2, gap, gap / 2, gap / 2));
        stack.gap(gap / 2);
        for (Component button : buttons.getComponents()) {
            button.setFont(scale.plain(13));
        }
        line = scale.type(24);
        sizeList();
        halves.style(skin, scale);
        charts.style(skin, scale);
        title.setFont(scale.bold(18));
        title.setForeground(skin.ink());
        plan.setFont(scale.plain(13));
        plan.setForeground(skin.quiet());
        list.setFont(scale.plain(14));
        list.setFixedCellHeight(scale.type(24));
        list.setBackground(skin.ground());
        list.setForeground(skin.ink());
        verdict.dress(skin.ink(), scale.bold(19));
        basis.dress(skin.ink(), scale.plain(13));
        for (JScrollPane pane : List.of(listPane, basisPane, tablePane)) {
            pane.getViewport().setBackground(skin.ground());
        }
        table.style(skin, scale);
        curves.style(skin, scale);
        difference.style(skin, scale);
        revalidate();
        repaint();
    }

    /** The numbers of one difference, a speed a row. */
    private static final class RowTable extends PlainTable<ComparedPresenter.Page.Row> {
        private static final long serialVersionUID = 1;

        RowTable() {
            super("Difference by speed", 13, heads("this"));
        }

        private static List<String> heads(String label) {
            return List.of("rpm", label, "reference", "%", "from", "to");
        }

        void show(String label, List<ComparedPresenter.Page.Row> rows) {
            show(heads(label), rows);
        }

        @Override
        protected String text(ComparedPresenter.Page.Row row, int column) {
            return List.of(row.rpm(), row.label(), row.reference(), row.percent(), row.from(), row.to())
                    .get(column);
        }

        @Override
        protected boolean isRight(int column) {
            return true;
        }
    }
}
