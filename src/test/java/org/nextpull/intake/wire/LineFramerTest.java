package org.nextpull.intake.wire;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LineFramerTest {
    private static final ArrivalTime AT = new ArrivalTime(0, 0);

    private final Seen seen = new Seen();
    private final LineFramer framer = new LineFramer();

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void howTheBytesAreCutIntoRunsMakesNoDifference(long seed) {
        Random random = new Random(seed);
        List<String> lines = new ArrayList<>();
        StringBuilder stream = new StringBuilder();
        for (int line = 0; line < 400; line++) {
            String text = "x".repeat(1 + random.nextInt(random.nextInt(10) == 0 ? 3000 : 40)) + line;
            lines.add(text);
            stream.append(text).append(List.of("\n", "\r\n", "\r", "\n\n").get(random.nextInt(4)));
        }
        byte[] bytes = stream.toString().getBytes(StandardCharsets.US_ASCII);
        for (int from = 0; from < bytes.length; ) {
            int length = Math.min(bytes.length - from, 1 + random.nextInt(random.nextBoolean() ? 5 : 5000));
            feed(Arrays.copyOfRange(bytes, from, from + length));
            from += length;
        }
        assertThat(seen.lines).isEqualTo(lines);
        assertThat(framer.heldBytes()).isZero();
    }

    @Test
    void aLineKnowsHowManyBytesCameAfterItsEnd() {
        feed("one\r\ntwo\nthr".getBytes(StandardCharsets.US_ASCII));
        assertThat(seen.after).containsExactly(8, 3);
        assertThat(framer.heldBytes()).isEqualTo(3);
    }

    @Test
    void bytesWithoutALineEndAreNotHeldWithoutEnd() {
        for (int run = 0; run < 100; run++) {
            feed(new byte[4096]);
            assertThat(framer.heldBytes()).isLessThanOrEqualTo(LineFramer.MOST_LINE_BYTES);
        }
        feed("tail\ngood\n".getBytes(StandardCharsets.US_ASCII));
        assertThat(seen.overlong).isEqualTo(1);
        assertThat(seen.lines).containsExactly("good");
    }

    @Test
    void anOverlongLineInOneRunIsDroppedToo() {
        feed(("y".repeat(LineFramer.MOST_LINE_BYTES + 1) + "\ngood\n").getBytes(StandardCharsets.US_ASCII));
        assertThat(seen.overlong).isEqualTo(1);
        assertThat(seen.lines).containsExactly("good");
    }

    /**
     * Checksums of sentences that circulate in public descriptions of NMEA 0183, from memory; the rule (exclusive or of what stands
     * between $ and *) is the standard's.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "$GPRMC,155123.000,A,4043.8432,N,07359.7653,W,0.15,83.25,200407,,*28 | GOOD",
                "$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,*47 | GOOD",
                "$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.5,M,46.9,M,,*47 | WRONG_CHECKSUM",
                "$GPGGA,123519,4807.038 | NOT_A_SENTENCE",
                "GPGGA,123519*47 | NOT_A_SENTENCE",
                "$GPGGA,123519*4 | NOT_A_SENTENCE",
                "$GPGGA,123519*ZZ | NOT_A_SENTENCE",
                "$*00 | NOT_A_SENTENCE",
                "* | NOT_A_SENTENCE",
                "23519,48$GPRMC,155123.000,A,4043.8432,N,07359.7653,W,0.15,83.25,200407,,*28 | GOOD"
            })
    void aSentenceIsTakenWithItsOwnChecksumOnly(String line, SentenceFrame.Checked result) {
        byte[] bytes = line.getBytes(StandardCharsets.US_ASCII);
        assertThat(SentenceFrame.check(bytes, SentenceFrame.start(bytes, 0, bytes.length), bytes.length))
                .isEqualTo(result);
    }

    @Test
    void aSentenceIsFramedAsItIsRead() {
        assertThat(SentenceFrame.of("GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,"))
                .endsWith("M,,*47\r\n")
                .startsWith("$GPGGA");
    }

    private void feed(byte[] bytes) {
        framer.feed(Chunk.copyOf("wire", AT, bytes, bytes.length), seen);
    }

    private static final class Seen implements LineFramer.Lines {
        private final List<String> lines = new ArrayList<>();
        private final List<Integer> after = new ArrayList<>();
        private int overlong;

        @Override
        public void line(byte[] buffer, int start, int end, int bytesAfter) {
            lines.add(new String(buffer, start, end - start, StandardCharsets.US_ASCII));
            after.add(bytesAfter);
        }

        @Override
        public void overlong() {
            overlong++;
        }
    }
}
