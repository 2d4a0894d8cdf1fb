package org.nextpull.window;

import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.function.Consumer;
import org.nextpull.app.DaySheet;
import org.nextpull.session.OperatorAction;
import org.nextpull.window.day.DaySource;

/** A day of which the test says what happens when; it makes no sheet until it is let. */
final class HandFedDay implements DaySource {
    private final CountDownLatch sheets = new CountDownLatch(1);
    private volatile Consumer<DaySource.Moment> watcher = moment -> {};

    void feed(DaySource.Moment moment) {
        watcher.accept(moment);
    }

    /** Lets sheets be made; none can be made of this day, and that is said in the log. */
    void let() {
        sheets.countDown();
    }

    @Override
    public void start(Consumer<DaySource.Moment> newWatcher) {
        watcher = newWatcher;
    }

    @Override
    public Optional<DaySource.Player> player() {
        return Optional.empty();
    }

    @Override
    public void tell(OperatorAction act) {}

    @Override
    public DaySheet sheet() {
        try {
            sheets.await();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
        throw new IllegalStateException("a day of moments has no sheet");
    }

    @Override
    public void close() {
        let();
    }
}
