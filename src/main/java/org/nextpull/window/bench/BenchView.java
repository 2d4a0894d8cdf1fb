package org.nextpull.window.bench;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.awt.GridLayout;
import java.util.List;
import java.util.Optional;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import javax.swing.Timer;
import org.jspecify.annotations.Nullable;
import org.nextpull.chart.SpeedPlot;
import org.nextpull.chart.SweepPlot;
import org.nextpull.window.look.ScrollView;
import org.nextpull.window.look.SharedSplit;
import org.nextpull.window.look.StackLayout;
import org.nextpull.window.look.Styled;
import org.nextpull.window.look.StyledPanel;
import org.nextpull.window.page.ChartCanvas;
import org.nextpull.window.page.Work;

/** The bench page: the next step left, the charts right, the pulls below, each as large as it matters. */
final class BenchView extends StyledPanel {
    private static final long serialVersionUID = 1;
    private static final int FLASH_MS = 1500;
    private static final String DAY = "day";
    private static final String PULL = "pull";
    private static final String SWEEP = "sweep";
    private static final String MAP = "map";

    private final StatusView status = new StatusView();
    private final LeadView lead = new LeadView();
    private final MapStripView map = new MapStripView();
    private final ConditionsView conditions = new ConditionsView();
    private final ChartCanvas sweep;
    private final ChartCanvas other;
    private final JPanel sweeps = new JPanel(new GridLayout(1, 0));
    private final ChartCanvas sparkMap;
    private final CardLayout upperCards = new CardLayout();
    private final JPanel upper = new JPanel(upperCards);
    private final ChartCanvas speed;
    private final PullStrip strip = new PullStrip();
    private final RemarksView remarks = new RemarksView();
    private final ScrollView stripPane = ScrollView.across(strip);
    private final ScrollView remarksPane = ScrollView.upright(remarks);
    private final PullView pull;
    private final CardLayout cards = new CardLayout();
    private final JPanel middle = new JPanel(cards);
    private final JPanel foot = new JPanel(new BorderLayout());
    private final SharedSplit halves;
    private final SharedSplit charts;
    private final SharedSplit below;
    private final StackLayout stack;
    private final Timer calm = new Timer(FLASH_MS, event -> flash(false));
    private transient @Nullable BenchPage page;

    BenchView(Work work) {
        super(new StackLayout());
        stack = (StackLayout) getLayout();
        calm.setRepeats(false);
        pull = new PullView(work);
        sweep = new ChartCanvas(work, "Response against the factor", "The first pull will be drawn here.");
        other = new ChartCanvas(work, "Response against the other factor", "");
        sweeps.setOpaque(false);
        sweeps.add(sweep);
        sparkMap = new ChartCanvas(work, "Spark map", "The maps that were run will be drawn here.");
        speed = new ChartCanvas(work, "Torque and power over speed", "Curves over speed will be drawn here.");
        JPanel left = new JPanel(new BorderLayout());
        left.add(lead, BorderLayout.CENTER);
        left.add(conditions, BorderLayout.SOUTH);
        upper.setOpaque(false);
        upper.add(sweeps, SWEEP);
        upper.add(sparkMap, MAP);
        charts = new SharedSplit(JSplitPane.VERTICAL_SPLIT, upper, speed, 0.55);
        halves = new SharedSplit(JSplitPane.HORIZONTAL_SPLIT, left, charts, 0.44);
        below = new SharedSplit(JSplitPane.HORIZONTAL_SPLIT, stripPane, remarksPane, 0.68);
        middle.add(halves, DAY);
        middle.add(pull, PULL);
        foot.add(below, BorderLayout.CENTER);
        add(status);
        add(map);
        add(middle, StackLayout.Row.stretching(1));
        add(foot, StackLayout.Row.yielding(1));
        strip.addListSelectionListener(event -> remarks());
        getAccessibleContext().setAccessibleName("Bench");
    }

    /** Shows a page. */
    void show(BenchPage newPage) {
        page = newPage;
        status.show(newPage);
        lead.show(newPage.lead());
        map.show(newPage.map());
        conditions.show(newPage.conditions());
        sweep.show(newPage.sweep(), newPage.sweep().map(SweepPlot::title).orElse(""));
        if (newPage.other().isPresent()) {
            sweeps.add(other);
        } else {
            sweeps.remove(other);
        }
        sweeps.revalidate();
        other.show(newPage.other(), newPage.other().map(SweepPlot::title).orElse(""));
        sparkMap.show(
                newPage.sparkMap(),
                newPage.sparkMap().map(plot -> "Spark advance over speed").orElse(""));
        // a plan that sweeps nothing leaves the room to the curves
        boolean sweeps = newPage.sweep().isPresent()
                || newPage.sparkMap().isPresent()
                || newPage.map().isPresent();
        upper.setVisible(sweeps || newPage.cards().isEmpty());
        upperCards.show(upper, newPage.map().isPresent() || newPage.sparkMap().isPresent() ? MAP : SWEEP);
        speed.show(newPage.speed(), newPage.speed().map(SpeedPlot::torqueTitle).orElse(""));
        strip.show(newPage.cards(), newPage.next());
        newPage.pull().ifPresent(pull::show);
        boolean runs = newPage.pull().isPresent();
        if (runs != pull.isVisible()) {
            // the strip keeps the focus, and with it the keys of the page, though it has no height meanwhile
            stack.row(foot, runs ? StackLayout.Row.hidden() : StackLayout.Row.yielding(1));
            cards.show(middle, runs ? PULL : DAY);
            revalidate();
        }
        remarks();
    }

    /** What is to be set has changed: that is seen for a moment. */
    void flash() {
        flash(true);
        calm.restart();
    }

    private void flash(boolean isNew) {
        lead.flash(isNew);
        pull.flash(isNew);
    }

    private void remarks() {
        if (page != null) {
            Optional<BenchPage.PullCard> selected = strip.selected();
            remarks.show(
                    selected.map(card -> "Pull " + card.number()).orElse(""),
                    selected.map(BenchPage.PullCard::remarks).orElse(List.of()),
                    page.day());
            remarksPane.getVerticalScrollBar().setValue(0);
        }
    }

    /** The pull that the operator selected. */
    Optional<BenchPage.PullCard> selected() {
        return strip.selected();
    }

    /** Puts the focus where the arrow keys go through the pulls. */
    void focus() {
        strip.requestFocusInWindow();
    }

    /** How many pictures the charts have drawn. */
    int pictures() {
        return sweep.pictures() + other.pictures() + sparkMap.pictures() + speed.pictures();
    }

    @Override
    protected void dress() {
        ground(middle, foot, halves.getLeftComponent());
        foot.setPreferredSize(new Dimension(10, scale.type(104) + scale.space(18)));
        foot.setBorder(scale.margin(0, 8, 2, 8));
        List.<Styled>of(
                        status,
                        lead,
                        map,
                        conditions,
                        sweep,
                        other,
                        sparkMap,
                        speed,
                        stripPane,
                        remarksPane,
                        pull,
                        halves,
                        charts,
                        below)
                .forEach(part -> part.style(skin, scale));
    }
}
