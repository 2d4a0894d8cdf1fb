package org.nextpull.intake.capture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.zip.CRC32C;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.ArrivalTime;
import org.nextpull.intake.wire.Chunk;

class CaptureFormatTest {
    private static final ArrivalTime START = new ArrivalTime(0, 1_700_000_000_000L);

    /** RFC 3720, appendix B.4, and the check value of the catalogued algorithm. */
    @Test
    void theCheckIsTheOneOfTheStandard() {
        CRC32C crc = new CRC32C();
        crc.update("123456789".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
        assertThat(crc.getValue()).isEqualTo(0xe3069283L);
        crc.reset();
        crc.update(new byte[32]);
        assertThat(crc.getValue()).isEqualTo(0x8a9136aaL);
    }

    /** The file was written by another program from the description of the format; see captures/README.md. */
    @Test
    void aFileOfTheFirstFormatIsRead() throws IOException {
        byte[] capture;
        try (InputStream in = Objects.requireNonNull(getClass().getResourceAsStream("/captures/format-1.capture"))) {
            capture = in.readAllBytes();
        }
        List<CaptureReader.Entry> entries = Captures.entries(capture);

        String source = "/dev/ttyUSB0";
        long wall = 1_700_000_000_000L;
        assertThat(entries)
                .containsExactly(
                        new CaptureReader.Entry.Started(source, new ArrivalTime(0, wall)),
                        received(new Arrival.Connected(source, new ArrivalTime(1000, wall))),
                        received(Chunk.of(source, new ArrivalTime(2_000_000, wall + 2), "rpm,torque\r\n3000,1")),
                        received(Chunk.of(source, new ArrivalTime(2_500_000, wall + 3), "80.5\r\n")),
                        received(new Arrival.Lost(
                                source, new ArrivalTime(3_000_000, wall + 3), Arrival.Cause.UNPLUGGED, 0)),
                        received(new Arrival.FromFile(
                                source, new ArrivalTime(4_000_000, wall + 4), "zug-\u00e4.csv", 17)),
                        new CaptureReader.Entry.Ended(new ArrivalTime(5_000_000, wall + 5)));
        assertThat(write(7, Captures.received(entries))).hasSizeLessThan(capture.length);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void whatWasWrittenIsReadToTheSameBytesAndTimes(long seed) throws IOException {
        List<Arrival> arrivals = Captures.arrivals(seed, 500);
        List<CaptureReader.Entry> entries = Captures.entries(write((int) seed, arrivals));
        assertThat(Captures.received(entries)).isEqualTo(arrivals);
        assertThat(Captures.damage(entries)).isEmpty();
    }

    @Test
    void cutAtAnyByteAllWholeRecordsAreThere() throws IOException {
        List<Arrival> arrivals = Captures.arrivals(11, 40);
        byte[] whole = write(99, arrivals);
        List<Integer> ends = ends(arrivals);
        for (int cut = 0; cut <= whole.length; cut++) {
            List<CaptureReader.Entry> entries = Captures.entries(Arrays.copyOf(whole, cut));
            int before = cut;
            int complete = (int) ends.stream().filter(end -> end <= before).count();
            assertThat(Captures.received(entries)).as("cut at %d", cut).isEqualTo(arrivals.subList(0, complete));
            long damaged = Captures.damage(entries).stream()
                    .mapToLong(CaptureReader.Entry.Damaged::bytes)
                    .sum();
            int good = complete == 0 ? (cut >= startBytes() ? startBytes() : 0) : ends.get(complete - 1);
            assertThat(damaged).as("cut at %d", cut).isEqualTo(cut - good);
        }
    }

    @Test
    void cutAtAnyByteAndContinuedBothPartsAreThere() throws IOException {
        List<Arrival> first = Captures.arrivals(21, 12);
        List<Arrival> second = Captures.arrivals(22, 12);
        byte[] before = write(99, first);
        byte[] after = write(99, second);
        List<Integer> ends = ends(first);
        for (int cut = startBytes(); cut <= before.length; cut++) {
            ByteArrayOutputStream file = new ByteArrayOutputStream();
            file.write(before, 0, cut);
            file.write(after);
            int kept = cut;
            List<Arrival> expected = new ArrayList<>(first.subList(
                    0, (int) ends.stream().filter(end -> end <= kept).count()));
            expected.addAll(second);
            assertThat(Captures.received(Captures.entries(file.toByteArray())))
                    .as("cut at %d", cut)
                    .isEqualTo(expected);
        }
    }

    @Test
    void anyDamagedByteCostsNoMoreThanItsRecord() throws IOException {
        List<Arrival> arrivals = Captures.arrivals(31, 25);
        byte[] whole = write(99, arrivals);
        List<Integer> ends = ends(arrivals);
        Random random = new Random(7);
        for (int at = 0; at < whole.length; at++) {
            byte[] damaged = whole.clone();
            damaged[at] ^= (byte) (1 + random.nextInt(255));
            List<CaptureReader.Entry> entries = Captures.entries(damaged);
            int place = at;
            int hit = (int) ends.stream().filter(end -> end <= place).count();
            List<Arrival> expected = new ArrayList<>(arrivals);
            if (at >= startBytes()) {
                expected.remove(hit);
            }
            assertThat(Captures.received(entries)).as("byte %d", at).isEqualTo(expected);
            assertThat(Captures.damage(entries)).as("byte %d", at).hasSize(1);
        }
    }

    @Test
    void aCaptureSentOverAWireIsNotTakenForTheCaptureItself() throws IOException {
        byte[] inner = write(5, Captures.arrivals(41, 10));
        List<Arrival> outer = List.of(Chunk.copyOf(Captures.SOURCE, START, inner, inner.length));
        byte[] whole = write(6, outer);
        whole[startBytes() + 12] ^= 1;
        List<CaptureReader.Entry> entries = Captures.entries(whole);
        assertThat(Captures.received(entries)).isEmpty();
        assertThat(Captures.damage(entries)).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void randomBytesAreDamageAndNothingElse(long seed) throws IOException {
        byte[] noise = new byte[300_000];
        new Random(seed).nextBytes(noise);
        assertThat(Captures.entries(noise)).containsExactly(new CaptureReader.Entry.Damaged(0, noise.length));
    }

    private static CaptureReader.Entry received(Arrival arrival) {
        return new CaptureReader.Entry.Received(arrival);
    }

    static byte[] write(int id, List<Arrival> arrivals) {
        RecordEncoder encoder = new RecordEncoder(id);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        put(out, encoder.started(Captures.SOURCE, START));
        arrivals.forEach(arrival -> put(out, encoder.received(arrival)));
        return out.toByteArray();
    }

    private static List<Integer> ends(List<Arrival> arrivals) {
        RecordEncoder encoder = new RecordEncoder(0);
        List<Integer> ends = new ArrayList<>();
        int end = startBytes();
        for (Arrival arrival : arrivals) {
            end += encoder.received(arrival).remaining();
            ends.add(end);
        }
        return ends;
    }

    private static int startBytes() {
        return new RecordEncoder(0).started(Captures.SOURCE, START).remaining();
    }

    private static void put(ByteArrayOutputStream out, ByteBuffer buffer) {
        out.writeBytes(Captures.bytes(buffer));
    }
}
