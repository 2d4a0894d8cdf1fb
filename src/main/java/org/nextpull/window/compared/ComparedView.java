package org.nextpull.window.compared;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.GridLayout;
import java.util.List;
import java.util.Optional;
import javax.swing.DefaultListModel;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import javax.swing.ListSelectionModel;
import org.nextpull.app.LabelledLog;
import org.nextpull.chart.DifferencePlot;
import org.nextpull.chart.OverlayPlot;
import org.nextpull.window.look.Prose;
import org.nextpull.window.look.ScrollView;
import org.nextpull.window.look.SharedSplit;
import org.nextpull.window.look.StackLayout;
import org.nextpull.window.look.StyledPanel;
import org.nextpull.window.page.ChartCanvas;
import org.nextpull.window.page.KeyCommand;
import org.nextpull.window.page.PlainTable;
import org.nextpull.window.page.Work;

/** The page: what is compared and the verdict left, with what it rests on and its numbers; the curves right. */
final class ComparedView extends StyledPanel {
    private static final long serialVersionUID = 1;
    private static final int MOST_ROWS = 4;

    /** Height of what the verdict rests on against that of the table. */
    private static final double BASIS = 0.35;

    private final JLabel title = new JLabel("Compared");
    private final JLabel plan = new JLabel(" ");
    private final DefaultListModel<String> model = new DefaultListModel<>();
    private final JList<String> list = new JList<>(model);
    private final ScrollView listPane = ScrollView.of(list);
    private final Prose verdict = new Prose("Verdict");
    private final Prose basis = new Prose("What the verdict rests on");
    private final ScrollView basisPane = ScrollView.upright(basis);
    private final RowTable table = new RowTable();
    private final ScrollView tablePane = ScrollView.upright(table);
    private final ChartCanvas curves;
    private final ChartCanvas difference;
    private transient ComparedPresenter.Page page = ComparedPresenter.Page.saying(List.of());
    private int shown;
    private final StackLayout stack = new StackLayout();
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
        left.add(basisPane, new StackLayout.Row(1, BASIS, 0));
        left.add(tablePane, StackLayout.Row.stretching(1));
        charts = new SharedSplit(JSplitPane.VERTICAL_SPLIT, curves, difference, 0.5);
        halves = new SharedSplit(JSplitPane.HORIZONTAL_SPLIT, left, charts, 0.47);
        add(halves, BorderLayout.CENTER);
        getAccessibleContext().setAccessibleName("Comparison");
    }

    /** A button for each key of the page. */
    void buttons(List<KeyCommand> keys) {
        for (KeyCommand key : keys) {
            buttons.add(button(key.title() + " (" + key.shown() + ")", key.action()));
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
    protected void dress() {
        ground(left, list);
        left.setBorder(scale.margin(7, 14, 7, 7));
        stack.gap(scale.space(7));
        for (Component button : buttons.getComponents()) {
            button.setFont(scale.plain(13));
        }
        line = scale.type(24);
        sizeList();
        halves.style(skin, scale);
        charts.style(skin, scale);
        type(title, scale.bold(18), skin.ink());
        type(plan, scale.plain(13), skin.quiet());
        type(list, scale.plain(14), skin.ink());
        list.setFixedCellHeight(scale.type(24));
        verdict.dress(skin.ink(), scale.bold(19));
        basis.dress(skin.ink(), scale.plain(13));
        List.of(listPane, basisPane, tablePane, curves, difference).forEach(part -> part.style(skin, scale));
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
