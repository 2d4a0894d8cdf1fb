package org.nextpull.intake.serial;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.ArrivalQueue;
import org.nextpull.intake.wire.Chunk;
import org.nextpull.intake.wire.SessionClock;
import org.nextpull.plan.PortFacts;

@Timeout(60)
class WireReaderTest {
    private static final Port.Settings SETTINGS = Port.Settings.usual("COM3", 9600);

    private final ArrivalQueue queue = new ArrivalQueue(SessionClock.system());

    @Test
    void aDeviceThatGoesAwayIsOpenedAgainByItself() throws InterruptedException {
        Opener opener = new Opener(List.of(
                Optional.empty(),
                Optional.of(new FakePort("one", "two")),
                Optional.empty(),
                Optional.empty(),
                Optional.of(new FakePort("three"))));
        try (WireReader reader = WireReader.start(SETTINGS, opener, queue)) {
            assertThat(reader.settings()).isEqualTo(SETTINGS);
            assertThat(next()).isInstanceOf(Arrival.Trouble.class);
            assertThat(next()).isInstanceOf(Arrival.Connected.class);
            assertThat(text(next())).isEqualTo("one");
            assertThat(text(next())).isEqualTo("two");
            assertThat(next())
                    .isInstanceOfSatisfying(
                            Arrival.Lost.class, lost -> assertThat(lost.why()).isEqualTo(Arrival.Cause.UNPLUGGED));
            assertThat(next()).as("said once, not at each try").isInstanceOf(Arrival.Trouble.class);
            assertThat(next()).isInstanceOf(Arrival.Connected.class);
            assertThat(text(next())).isEqualTo("three");
        }
        assertThat(opener.closed).hasSize(2);
    }

    @Test
    void aLibraryThatFailsToLoadIsSaidOnceWithTheFirstCause() throws InterruptedException {
        SerialPorts.Library broken = new SerialPorts.Library() {
            private int calls;

            @Override
            public List<SerialPorts.PortInfo> list() {
                throw failure();
            }

            @Override
            public boolean isThere(String device) {
                throw failure();
            }

            @Override
            public Outcome<Port> open(Port.Settings settings) {
                throw failure();
            }

            private LinkageError failure() {
                calls++;
                return calls == 1
                        ? new UnsatisfiedLinkError("/tmp/lib.so: failed to map segment")
                        : new NoClassDefFoundError("Could not initialize class");
            }
        };
        SerialPorts ports = new SerialPorts(broken);
        Finding first = ports.list().findings().get(0);
        assertThat(first.code()).isEqualTo(FindingCode.WIRE_LIBRARY_UNUSABLE);
        assertThat(first.text("why")).contains("/tmp/lib.so: failed to map segment");
        assertThat(ports.open(SETTINGS).findings()).containsExactly(first);
        try (WireReader reader = WireReader.start(SETTINGS, ports, queue)) {
            assertThat(next())
                    .isInstanceOfSatisfying(
                            Arrival.Trouble.class,
                            trouble -> assertThat(trouble.finding()).isEqualTo(first));
            assertThat(queue.take(700)).isEmpty();
            assertThat(reader.settings()).isEqualTo(SETTINGS);
        }
    }

    @Test
    void anEmptyNameIsRefusedBeforeTheLibraryIsAsked() {
        Outcome<Port> opened = new SerialPorts().open(Port.Settings.usual(" ", 9600));
        assertThat(opened.findings())
                .singleElement()
                .extracting(Finding::code)
                .isEqualTo(FindingCode.WIRE_WITHOUT_NAME);
    }

    /** Common practice: a byte at 9600 baud, 8 data bits, no parity, one stop bit is ten symbols, 1.04 ms. */
    @Test
    void aByteTakesItsSymbolsOnTheLine() {
        assertThat(SETTINGS.port().byteNs()).isEqualTo(1_041_667);
        assertThat(SETTINGS.port().text()).isEqualTo("9600 8N1");
        PortFacts slow =
                new PortFacts(300, 7, PortFacts.Parity.EVEN, PortFacts.Stop.ONE_AND_A_HALF, PortFacts.Flow.NONE);
        assertThat(slow.text()).isEqualTo("300 7E1.5");
        assertThat(slow.byteNs()).isEqualTo(35_000_000);
    }

    private Arrival next() throws InterruptedException {
        return queue.take(10_000).orElseThrow();
    }

    private static String text(Arrival arrival) {
        return new String(((Chunk) arrival).toArray(), StandardCharsets.UTF_8);
    }

    /** Gives its ports in turn; an empty one is a port that is not there. */
    private static final class Opener implements Port.Opener {
        private final Deque<Optional<FakePort>> turns = new ArrayDeque<>();
        private final ConcurrentLinkedQueue<FakePort> closed = new ConcurrentLinkedQueue<>();

        Opener(List<Optional<FakePort>> ports) {
            turns.addAll(ports);
        }

        @Override
        public Outcome<Port> open(Port.Settings settings) {
            Optional<FakePort> port = turns.isEmpty() ? Optional.empty() : turns.removeFirst();
            port.ifPresent(each -> each.closed = closed);
            return port.<Outcome<Port>>map(Outcome::of)
                    .orElseGet(() ->
                            Outcome.failed(Finding.error(FindingCode.WIRE_NOT_THERE, Place.inFile(settings.device()))));
        }
    }

    /** Gives its texts and then goes away; the last port of a test just gives nothing more once its texts are given. */
    private static final class FakePort implements Port {
        private final Deque<String> texts;
        private ConcurrentLinkedQueue<FakePort> closed = new ConcurrentLinkedQueue<>();

        FakePort(String... texts) {
            this.texts = new ArrayDeque<>(List.of(texts));
        }

        @Override
        public int read(byte[] buffer) throws IOException {
            if (texts.isEmpty()) {
                throw new IOException("gone");
            }
            byte[] bytes = texts.removeFirst().getBytes(StandardCharsets.UTF_8);
            System.arraycopy(bytes, 0, buffer, 0, bytes.length);
            return bytes.length;
        }

        @Override
        public void write(byte[] bytes) {
            throw new UnsupportedOperationException();
        }

        @Override
        public void close() {
            closed.add(this);
        }
    }
}
