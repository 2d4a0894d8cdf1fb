package org.nextpull.window.compared;

import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;
import javax.swing.ScrollPaneConstants;
import org.nextpull.app.LabelledLog;
import org.nextpull.chart.DifferencePlot;
import org.nextpull.chart.OverlayPlot;
import org.nextpull.window.look.Look;
import org.nextpull.window.look.Prose;
import org.nextpull.window.look.Skin;
import org.nextpull.window.look.Styled;
import org.nextpull.window.look.TypeScale;
import org.nextpull.window.page.ChartCanvas;
import org.nextpull.window.work.Work;

/** The page: what is compared and the verdict left, with what it rests on and its numbers; the curves right. */
final class ComparedView extends JPanel implements Styled {
    private static final long serialVersionUID = 1;
    private static final double LEFT = 0.47;
    private static final int MOST_ROWS = 4;

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
    private final ChartCanvas<OverlayPlot> curves;
    private final ChartCanvas<DifferencePlot> difference;
    private transient ComparedPage page = ComparedPage.saying(List.of());
    private int shown;
    private transient Skin skin = Skin.of(Look.plain());
    private transient TypeScale scale = TypeScale.of(1280, 720, Look.plain());

    ComparedView(Work work) {
        super(null);
        curves = new ChartCanvas<>(
                work,
                "Mean curves",
                "Mean curves over speed will be drawn here.",
                (drawing, plot) -> drawing.charts().paint(plot, drawing.surface()));
        difference = new ChartCanvas<>(
                work,
                "Difference over speed",
                "The difference over speed will be drawn here.",
                (drawing, plot) -> drawing.charts().paint(plot, drawing.surface()));
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.getAccessibleContext().setAccessibleName("What is compared");
        plan.getAccessibleContext().setAccessibleName("Plan of the comparison");
        listPane.setBorder(BorderFactory.createEmptyBorder());
        basis.setFocusable(true);
        parts().forEach(this::add);
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

    private List<JComponent> parts() {
        return List.of(title, plan, listPane, verdict, basisPane, tablePane, curves, difference);
    }

    /** Shows what is to be compared. */
    void show(List<LabelledLog> contenders, String planName) {
        int before = list.getSelectedIndex();
        model.clear();
        contenders.forEach(one -> model.addElement(one.shown()));
        list.setSelectedIndex(Math.min(Math.max(0, before), contenders.size() - 1));
        plan.setText(planName.isBlank() ? "under the plan of the first session" : "under " + planName);
        plan.getAccessibleContext().setAccessibleDescription(plan.getText());
        revalidate();
    }

    /** Place of the selected one; below 0 where there is none. */
    int selected() {
        return list.getSelectedIndex();
    }

    void show(ComparedPage newPage) {
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
    public void style(Skin newSkin, TypeScale newScale) {
        skin = newSkin;
        scale = newScale;
        setBackground(skin.ground());
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

    @Override
    public void doLayout() {
        int gap = scale.space(14);
        int line = scale.type(28);
        int left = (int) (getWidth() * LEFT);
        int wide = left - 2 * gap;
        int y = gap / 2;
        int across = title.getPreferredSize().width + gap;
        title.setBounds(gap, y, across, line);
        plan.setBounds(gap + across, y, wide - across, line);
        y += line;
        int high = scale.type(24) * Math.max(1, Math.min(MOST_ROWS, model.size()));
        listPane.setBounds(gap, y, wide, high);
        y += high + gap / 2;
        high = Math.min(verdict.heightAt(wide), getHeight() / 2);
        verdict.setBounds(gap, y, wide, high);
        y += high + gap / 2;
        int rest = Math.max(0, getHeight() - y - gap / 2);
        int words = Math.min(basis.heightAt(wide - scale.space(14)), rest / 2);
        basisPane.setBounds(gap, y, wide, words);
        tablePane.setBounds(gap, y + words + gap / 2, wide, Math.max(0, rest - words - gap / 2));
        int upper = getHeight() / 2;
        curves.setBounds(left, 0, getWidth() - left, upper);
        difference.setBounds(left, upper, getWidth() - left, getHeight() - upper);
    }

    @Override
    protected void paintComponent(java.awt.Graphics graphics) {
        super.paintComponent(graphics);
        graphics.setColor(skin.line());
        graphics.fillRect((int) (getWidth() * LEFT) - 1, 0, Math.max(1, scale.space(1)), getHeight());
    }
}
