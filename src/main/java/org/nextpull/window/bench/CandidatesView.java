package org.nextpull.window.bench;

import java.awt.BorderLayout;
import java.awt.KeyboardFocusManager;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import javax.swing.JTable;
import javax.swing.table.DefaultTableModel;
import org.nextpull.advice.Reason;
import org.nextpull.chart.OverlayPlot;
import org.nextpull.window.look.Prose;
import org.nextpull.window.look.SharedSplit;
import org.nextpull.window.look.StackLayout;
import org.nextpull.window.look.Styled;
import org.nextpull.window.look.StyledPanel;
import org.nextpull.window.page.ChartCanvas;
import org.nextpull.window.page.Work;

/** The next step and the checklist of a change-over left; the candidates in columns, their curves and what they come to right. */
final class CandidatesView extends StyledPanel {
    private static final long serialVersionUID = 1;
    private static final int HEAD_WIDTH = 130;
    /** Below this a chart cannot be read; sentences give way to it. */
    private static final int LEAST_CHART = 190;

    private final LeadView lead = new LeadView();
    private final StackLayout checks = new StackLayout();
    private final JPanel checklist = new JPanel(checks);
    private final transient List<JCheckBox> boxes = new ArrayList<>();
    private final JTable table = new JTable();
    private final Prose answer = new Prose("Which of them");
    private final Prose sentences = new Prose("What the candidates come to");
    private final ChartCanvas curves;
    private final StackLayout stack = new StackLayout();
    private final JPanel right = new JPanel(stack);
    private final SharedSplit halves;
    private final transient Runnable confirm;
    private transient Optional<Reason.ChangeOver> changeOver = Optional.empty();

    /**
     * A view.
     *
     * @param confirm what the box of a step does
     */
    CandidatesView(Work work, Runnable confirm) {
        super(new BorderLayout());
        this.confirm = confirm;
        curves = new ChartCanvas(work, "Mean curves of the decision runs", "The decision runs will be drawn here.");
        table.setShowGrid(false);
        table.setRowSelectionAllowed(false);
        table.getAccessibleContext().setAccessibleName("Candidates side by side");
        table.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        table.setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        checklist.getAccessibleContext().setAccessibleName("Checklist of the change-over");
        JPanel left = new JPanel(new BorderLayout());
        left.add(lead, BorderLayout.CENTER);
        left.add(checklist, BorderLayout.SOUTH);
        right.add(answer);
        right.add(table);
        right.add(curves);
        right.add(sentences, StackLayout.Row.yielding(1));
        halves = new SharedSplit(JSplitPane.HORIZONTAL_SPLIT, left, right, 0.44);
        add(halves, BorderLayout.CENTER);
        getAccessibleContext().setAccessibleName("Candidates");
    }

    void show(CandidateBoard board) {
        lead.show(board.lead());
        if (!board.changeOver().equals(changeOver)) {
            changeOver = board.changeOver();
            list(board.steps());
        }
        table.setModel(new Lines(board.lines()));
        answer.say(board.sentences().stream().findFirst().orElse(""));
        sentences.say(board.sentences().stream().skip(1).collect(Collectors.joining("\n")));
        curves.show(board.curves(), board.curves().map(OverlayPlot::title).orElse(""));
        style(skin, scale);
    }

    private void list(List<String> steps) {
        checklist.removeAll();
        boxes.clear();
        for (String step : steps) {
            JCheckBox box = new JCheckBox(step);
            // only a tick by hand, which asks for the rest
            box.addActionListener(event -> {
                if (boxes.stream().allMatch(JCheckBox::isSelected)) {
                    confirm.run();
                }
            });
            boxes.add(box);
            checklist.add(box);
        }
    }

    /** How many steps the change-over has; 0 where none is asked for. */
    int steps() {
        return boxes.size();
    }

    Optional<Reason.ChangeOver> changeOver() {
        return changeOver;
    }

    /** Ticks the next step; whether all of them are done now. */
    boolean confirm() {
        boxes.stream().filter(box -> !box.isSelected()).findFirst().ifPresent(box -> box.setSelected(true));
        return boxes.stream().allMatch(JCheckBox::isSelected);
    }

    void focus() {
        table.requestFocusInWindow();
    }

    @Override
    protected void dress() {
        ground(checklist, right, halves.getLeftComponent(), table);
        right.setBorder(scale.margin(14, 7, 7, 14));
        checklist.setBorder(scale.margin(0, 34, 14, 14));
        stack.gap(scale.space(7));
        checks.gap(scale.space(5));
        for (JCheckBox box : boxes) {
            type(box, scale.bold(18), skin.ink());
            box.setOpaque(false);
        }
        type(table, scale.plain(15), skin.ink());
        if (table.getColumnCount() > 0) {
            table.getColumnModel().getColumn(0).setPreferredWidth(scale.space(HEAD_WIDTH));
            table.getColumnModel().getColumn(0).setMaxWidth(scale.space(HEAD_WIDTH));
        }
        table.setRowHeight(scale.type(26));
        stack.row(curves, StackLayout.Row.stretching(scale.space(LEAST_CHART)));
        answer.dress(skin.ink(), scale.bold(16));
        sentences.dress(skin.ink(), scale.plain(13));
        List.<Styled>of(lead, curves, halves).forEach(part -> part.style(skin, scale));
    }

    /** A figure a line, a candidate a column. */
    private static final class Lines extends DefaultTableModel {
        private static final long serialVersionUID = 1;

        Lines(List<List<String>> lines) {
            super(0, lines.isEmpty() ? 0 : lines.get(0).size());
            lines.forEach(line -> addRow(line.toArray()));
        }

        @Override
        public boolean isCellEditable(int row, int column) {
            return false;
        }
    }
}
