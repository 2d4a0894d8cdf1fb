package org.nextpull.intake.wire;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ArrivalQueueTest {
    private static final byte[] BYTES = "0123456789".getBytes(java.nio.charset.StandardCharsets.US_ASCII);

    @Test
    void theOrderInTheQueueIsTheOrderOfTimesWhicheverThreadPut() throws InterruptedException {
        ArrivalQueue queue = new ArrivalQueue(SessionClock.system());
        List<Thread> threads = new ArrayList<>();
        for (int thread = 0; thread < 4; thread++) {
            String source = "wire " + thread;
            threads.add(new Thread(() -> {
                for (int index = 0; index < 5000; index++) {
                    queue.bytes(source, BYTES, 1 + index % BYTES.length);
                }
            }));
        }
        threads.forEach(Thread::start);
        long last = -1;
        for (int index = 0; index < 20_000; index++) {
            long at = queue.take(10_000).orElseThrow().at().sessionNs();
            assertThat(at).isGreaterThan(last);
            last = at;
        }
        assertThat(queue.take(1)).isEmpty();
        assertThat(queue.heldBytes()).isZero();
        for (Thread thread : threads) {
            thread.join();
        }
    }

    @Test
    void whatMemoryCannotHoldIsDroppedAndSaidWhereItIsMissing() throws InterruptedException {
        ArrivalQueue queue = new ArrivalQueue(SessionClock.system(), 25);
        for (int index = 0; index < 4; index++) {
            queue.bytes("a", BYTES, 10);
        }
        assertThat(queue.take(0)).get().isInstanceOf(Chunk.class);
        assertThat(queue.take(0)).get().isInstanceOf(Chunk.class);
        queue.bytes("a", BYTES, 3);
        assertThat(queue.take(0)).get().isInstanceOfSatisfying(Arrival.Lost.class, lost -> {
            assertThat(lost.why()).isEqualTo(Arrival.Cause.OVERRUN);
            assertThat(lost.bytes()).isEqualTo(20);
        });
        assertThat(queue.take(0)).get().isInstanceOf(Arrival.Connected.class);
        assertThat(queue.take(0))
                .get()
                .isInstanceOfSatisfying(
                        Chunk.class, chunk -> assertThat(chunk.length()).isEqualTo(3));
    }

    @Test
    void theSessionGoesOnWhereItsLastArrivalWasPlusTheTimeBetween() {
        ArrivalTime last = new ArrivalTime(5_000_000_000L, 1_000_000);
        SessionClock later = SessionClock.resuming(() -> 77, () -> java.time.Instant.ofEpochMilli(1_060_000), last);
        assertThat(later.now().sessionNs()).isEqualTo(65_000_000_001L);
        SessionClock clockSetBack =
                SessionClock.resuming(() -> 77, () -> java.time.Instant.ofEpochMilli(400_000), last);
        assertThat(clockSetBack.now().sessionNs()).isEqualTo(5_000_000_001L);
        assertThat(Optional.of(clockSetBack.now().sessionNs())).contains(5_000_000_002L);
    }
}
