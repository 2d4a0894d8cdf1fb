package org.nextpull.window.bench;

import java.awt.EventQueue;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.JComponent;
import org.jspecify.annotations.Nullable;
import org.nextpull.app.DaySheet;
import org.nextpull.live.LiveState;
import org.nextpull.report.Shown;
import org.nextpull.unit.UnitSystem;
import org.nextpull.window.day.DaySource;
import org.nextpull.window.page.FootBar;
import org.nextpull.window.page.KeyCommand;
import org.nextpull.window.page.Page;
import org.nextpull.window.page.Signals;
import org.nextpull.window.page.Work;

/**
 * The bench page at work: moments of the day come in on any thread, pages are made on the working thread, and the event thread shows the
 * latest of them.
 */
public final class BenchController implements Page {
    private final DaySource source;
    private final Work work;
    private final FootBar foot;
    private final Signals signals;
    private final ThrottleWatch throttle = new ThrottleWatch();
    private final Function<Shown, DaySheet.Order> sheets;
    private final BenchView view;
    private final Work.Latest<DaySource.Moment> moments;
    private final Work.Latest<BenchPage> pages;
    private volatile BenchPresenter presenter = new BenchPresenter(UnitSystem.METRIC);
    private volatile UnitSystem units = UnitSystem.METRIC;
    private volatile DaySource.@Nullable Moment last;
    private Consumer<DaySource.Moment> others = moment -> {};
    private Signals.AlarmSign sign = Signals.AlarmSign.none();
    private @Nullable BenchPage before;

    /**
     * A page for a day.
     *
     * @param source where the day comes from
     * @param signals shows what must be seen on every page
     * @param sheets how sheets are written in those units
     */
    public BenchController(
            DaySource source, Work work, FootBar foot, Signals signals, Function<Shown, DaySheet.Order> sheets) {
        this.source = source;
        this.work = work;
        this.foot = foot;
        this.signals = signals;
        this.sheets = sheets;
        this.view = new BenchView(work);
        this.moments = new Work.Latest<>(work::think, this::make);
        this.pages = new Work.Latest<>(EventQueue::invokeLater, this::show);
    }

    /** Another page shows the same moments; before the start. */
    public void alsoOn(Consumer<DaySource.Moment> page) {
        others = page;
    }

    /** Starts the day. */
    public void start() {
        source.start(moment -> {
            moment.running().ifPresent(this::watch);
            moments.give(moment);
        });
    }

    /** An alarm goes its own way, at once, and does not wait for the page to be made. */
    private synchronized void watch(LiveState state) {
        if (isLeft()) {
            return;
        }
        Signals.AlarmSign now = throttle.at(state, new Shown(units));
        if (!now.equals(sign)) {
            sign = now;
            signals.alarm(now);
        }
    }

    private void make(DaySource.Moment moment) {
        last = moment;
        pages.give(presenter.page(moment));
        others.accept(moment);
    }

    /** Whether another page stands in the place of this one: a session that ends loses its ports, which is no news then. */
    private boolean isLeft() {
        return view.getParent() == null;
    }

    private void show(BenchPage page) {
        if (isLeft()) {
            return;
        }
        boolean isNews = before != null
                && source.player().isEmpty()
                && !(page.lead().figures().equals(before.lead().figures())
                        && page.map().equals(before.map()));
        before = page;
        view.show(page);
        if (isNews) {
            signals.changed();
            view.flash();
        }
        signals.urgent(page.urgent().stream().map(BenchPage.Remark::sentence).toList());
    }

    @Override
    public void units(UnitSystem newUnits) {
        units = newUnits;
        work.think(() -> {
            presenter = new BenchPresenter(newUnits);
            DaySource.Moment moment = last;
            if (moment != null) {
                make(moment);
            }
        });
    }

    /** How many pictures its charts have drawn. */
    public int pictures() {
        return view.pictures();
    }

    @Override
    public String title() {
        return "Bench";
    }

    @Override
    public String hint() {
        return source.player().isPresent()
                ? "Space: play/pause    N/B: next/previous pull    X: exclude    E: export    F1: keys"
                : "S: setting    K: knock    X: exclude    F: parts/fuel    E: export    F1: keys";
    }

    @Override
    public JComponent view() {
        return view;
    }

    @Override
    public void focus() {
        view.focus();
    }

    @Override
    public List<KeyCommand> keys() {
        return new BenchActions(
                        source,
                        work,
                        foot,
                        view::selected,
                        () -> Optional.ofNullable(last),
                        () -> sheets.apply(new Shown(units)))
                .keys();
    }
}
