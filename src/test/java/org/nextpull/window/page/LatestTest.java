package org.nextpull.window.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A receiver that is slow gets the latest and no queue grows. */
class LatestTest {
    @Test
    void whoeverIsSlowSkips() {
        Deque<Runnable> waiting = new ArrayDeque<>();
        List<Integer> received = new ArrayList<>();
        Work.Latest<Integer> latest = new Work.Latest<>(waiting::add, received::add);
        for (int value = 1; value <= 1000; value++) {
            latest.give(value);
        }
        assertThat(waiting).hasSize(1);
        waiting.remove().run();
        assertThat(received).containsExactly(1000);
        latest.give(1001);
        waiting.remove().run();
        assertThat(received).containsExactly(1000, 1001);
    }

    @Test
    void whatIsGivenWhileTheReceiverWorksIsNotLost() {
        Deque<Runnable> waiting = new ArrayDeque<>();
        List<Integer> received = new ArrayList<>();
        List<Work.Latest<Integer>> self = new ArrayList<>();
        Work.Latest<Integer> latest = new Work.Latest<>(waiting::add, value -> {
            received.add(value);
            if (value < 3) {
                self.get(0).give(value + 1);
            }
        });
        self.add(latest);
        latest.give(1);
        while (!waiting.isEmpty()) {
            waiting.remove().run();
        }
        assertThat(received).containsExactly(1, 2, 3);
    }
}
