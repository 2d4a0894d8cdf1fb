package org.nextpull.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Dimension;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.nextpull.Await;
import org.nextpull.session.DayByPull;
import org.nextpull.window.day.DaySource;
import org.nextpull.window.day.Playback;
import org.nextpull.window.look.Look;

/**
 * The window over a long day: moments ten times a second, heap, and an event thread that answers whatever else is stuck. More refreshes
 * with {@code -Dnextpull.refreshes=N}; eight hours at ten a second are 288,000.
 */
class RefreshIT {
    private static final int REFRESHES = Integer.getInteger("nextpull.refreshes", 240);
    private static final int WARM = 60;
    private static final double MEGABYTE = 1e6;

    /** What caches of fonts and glyphs may still take after warming up. */
    private static final double MOST_GROWTH_MB = 4;

    /** Not a measure of speed: a loaded machine answers within this, a stuck event thread does not. */
    private static final long PATIENCE_MS = 1500;

    private static final DayByPull DAY = DayByPull.of(SampleDays.input("hillclimb-e10-timing"));

    @BeforeAll
    static void needDisplay() {
        Display.need();
    }

    private static List<DaySource.Moment> moments() {
        List<DaySource.Moment> moments = new ArrayList<>();
        for (int pulls = 1; pulls <= DAY.pulls(); pulls++) {
            moments.add(new DaySource.Moment(
                    "day.csv",
                    DAY.after(pulls),
                    Optional.of(new Playback(pulls, DAY.pulls(), 4, false, 0)),
                    Optional.empty()));
        }
        return moments;
    }

    private static DrivenWindow open(HandFedDay day) {
        DrivenWindow window = new DrivenWindow(day, Look.plain(), new Dimension(1280, 720));
        window.press("ENTER");
        window.until("the page", () -> window.isShowing("Next step"));
        return window;
    }

    @Test
    void theHeapStaysFlatAndTheEventThreadAnswersWhileChartsChange() {
        HandFedDay day = new HandFedDay();
        List<DaySource.Moment> moments = moments();
        try (DrivenWindow window = open(day);
                EventThreadWatch watch = new EventThreadWatch()) {
            refresh(window, day, moments, WARM);
            double before = heapMb();
            int pictures = window.pictures();
            watch.again();
            long startNs = System.nanoTime();
            refresh(window, day, moments, REFRESHES);
            double seconds = (System.nanoTime() - startNs) / 1e9;
            double after = heapMb();
            System.out.printf(
                    Locale.ROOT,
                    "%d refreshes, %d pictures in %.1f s; heap %.1f MB before, %.1f MB after; the event thread answered within %d ms in "
                            + "half, %d ms in 99 of 100, %d ms at worst%n",
                    REFRESHES,
                    window.pictures() - pictures,
                    seconds,
                    before,
                    after,
                    watch.waitMs(0.5),
                    watch.waitMs(0.99),
                    watch.waitMs(1));
            assertThat(window.pictures() - pictures)
                    .as("both charts were drawn anew")
                    .isGreaterThan(REFRESHES);
            assertThat(after - before).as("heap in MB").isLessThan(MOST_GROWTH_MB);
            assertThat(watch.waitMs(0.95)).isLessThan(PATIENCE_MS);
            assertThat(watch.trespasses()).isEmpty();
        }
    }

    /** As fast as the charts follow, which is faster than ten a second on a quiet machine. */
    private static void refresh(DrivenWindow window, HandFedDay day, List<DaySource.Moment> moments, int times) {
        for (int time = 0; time < times; time++) {
            int now = time;
            day.feed(moments.get(now % moments.size()));
            window.settle();
        }
    }

    private static double heapMb() {
        long least = Long.MAX_VALUE;
        for (int round = 0; round < 5; round++) {
            System.gc();
            Await.pass(Duration.ofMillis(60));
            Runtime runtime = Runtime.getRuntime();
            least = Math.min(least, runtime.totalMemory() - runtime.freeMemory());
        }
        return least / MEGABYTE;
    }

    @Test
    void theEventThreadAnswersWhateverElseIsStuck() {
        HandFedDay day = new HandFedDay();
        CountDownLatch stuck = new CountDownLatch(1);
        List<DaySource.Moment> moments = moments();
        try (DrivenWindow window = open(day)) {
            day.feed(moments.get(2));
            window.until("a page", () -> window.said("Next step").startsWith("Set, "));
            window.press("E");
            window.answer(List.of("Folder", "Name"), List.of("target", "never"));
            window.stick(stuck);
            day.feed(moments.get(3));
            window.press("D");
            window.press("G");
            window.press("F1");
            assertThat(window.isShowing("Keys shown"))
                    .as("with the threads that work and draw both stuck")
                    .isTrue();
            window.press("ESCAPE");
            window.press("T");
            window.answer(List.of("Note"), List.of("still here"));
            assertThat(window.isShowing("Next step")).isTrue();
            stuck.countDown();
            day.let();
        }
    }
}
