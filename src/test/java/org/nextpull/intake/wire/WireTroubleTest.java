package org.nextpull.intake.wire;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.channel.Role;
import org.nextpull.finding.FindingCode;
import org.nextpull.plan.WireFacts;

class WireTroubleTest {
    private static final String WIRE = "COM3";
    private static final String LINE = "3000,180.5,0.87\r\n";

    @Test
    void silenceIsSaidOnceAndThatItEndedToo() {
        Played played = played(WireFacts.Lines.SEPARATED);
        good(played, 0.1, 20);
        for (double at = 1; at < 5; at += 0.1) {
            played.tick(at);
        }
        good(played, 6, 10);
        assertThat(played.codes())
                .filteredOn(code -> code != FindingCode.WIRE_CONNECTED)
                .containsExactly(FindingCode.WIRE_SILENT, FindingCode.WIRE_WELL_AGAIN);
    }

    @Test
    void aWireThatNeverSaysAnythingIsSilent() {
        Played played = played(WireFacts.Lines.SEPARATED).tick(1).tick(1.9);
        assertThat(played.codes()).doesNotContain(FindingCode.WIRE_SILENT);
        played.tick(2.1);
        assertThat(played.codes()).contains(FindingCode.WIRE_SILENT);
    }

    @Test
    void textWithoutALineEndIsSaid() {
        Played played = played(WireFacts.Lines.SEPARATED);
        for (int run = 0; run < 40; run++) {
            played.text(WIRE, 0.1 + run * 0.1, "3000,180.5,0.87 3000,180.5,0.87 3000,180.5,0.87 3000,180.5,0.87 ");
        }
        assertThat(played.codes()).containsOnlyOnce(FindingCode.WIRE_NO_LINE_ENDS);
    }

    /**
     * A sender at one speed and a receiver at another: bits are drawn as an asynchronous line carries them (one start bit 0, eight data
     * bits from the least, one stop bit 1; common practice, as in the description of 8N1) and sampled in the middle of the receiver's.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.125, 0.25, 0.5, 2, 3, 4, 6, 12})
    void aWrongSpeedIsNamed(double receiverPerSender) {
        Played played = played(WireFacts.Lines.SEPARATED);
        byte[] heard = Uart.heard(LINE.repeat(3000).getBytes(StandardCharsets.US_ASCII), receiverPerSender);
        double at = 0.1;
        for (int from = 0; from + 100 <= heard.length && at < 20; from += 100) {
            byte[] run = java.util.Arrays.copyOfRange(heard, from, from + 100);
            played.accept(Chunk.copyOf(WIRE, Played.at(at), run, run.length));
            at += 0.05;
        }
        assertThat(played.codes())
                .containsAnyOf(FindingCode.WIRE_NOT_TEXT, FindingCode.WIRE_NO_LINE_ENDS, FindingCode.WIRE_LINES_BROKEN);
        assertThat(played.rows()).isEmpty();
    }

    @Test
    void theRightSpeedHearsWhatWasSent() {
        byte[] sent = LINE.repeat(20).getBytes(StandardCharsets.US_ASCII);
        assertThat(Uart.heard(sent, 1)).isEqualTo(sent);
    }

    @Test
    void wrongChecksumsAreCounted() {
        Played played = played(WireFacts.Lines.SENTENCE);
        for (int line = 0; line < 40; line++) {
            String sentence = SentenceFrame.of("TXENG," + (3000 + line) + ",180.5,0.87");
            played.text(WIRE, 0.1 + line * 0.01, line % 4 == 0 ? sentence.replace("180.5", "181.5") : sentence);
        }
        played.finish(2);
        assertThat(played.codes()).containsOnlyOnce(FindingCode.WIRE_CHECKSUMS_WRONG);
        assertThat(played.rows()).hasSize(30);
    }

    @Test
    void halfLinesAreSaidWithAnExample() {
        Played played = played(WireFacts.Lines.SEPARATED);
        for (int line = 0; line < 40; line++) {
            played.text(WIRE, 0.1 + line * 0.01, line % 2 == 0 ? LINE : "3000,18\r\n");
        }
        played.finish(2);
        assertThat(played.said())
                .filteredOn(finding -> finding.code() == FindingCode.WIRE_LINES_BROKEN)
                .singleElement()
                .satisfies(finding -> assertThat(finding.text("line")).contains("3000,18"));
        assertThat(played.rows()).hasSize(19);
    }

    @Test
    void linesWithoutAHeaderAreSaid() {
        Played played = new Played(WireSource.port(
                WIRE, new WireSource.LineSettings(WireFacts.Lines.SEPARATED, List.of(), 0, 0), "9600 8N1"));
        played.connected(WIRE, 0);
        good(played, 0.1, 30);
        assertThat(played.codes()).containsOnlyOnce(FindingCode.WIRE_WITHOUT_HEADER);
    }

    @Test
    void moreValuesThanColumnsAreSaid() {
        Played played = played(WireFacts.Lines.SEPARATED);
        for (int line = 0; line < 30; line++) {
            played.text(WIRE, 0.1 + line * 0.01, "3000,180.5,0.87,44\r\n");
        }
        assertThat(played.codes()).containsOnlyOnce(FindingCode.WIRE_FIELDS_DIFFER);
    }

    @ParameterizedTest
    @EnumSource(WireFacts.Lines.class)
    void randomBytesDoNoHarmAndGoodLinesAfterThemAreRead(WireFacts.Lines kind) {
        Played played = played(kind);
        Random random = new Random(5);
        byte[] noise = new byte[700];
        byte[] likeText = "0123456789.,;=$*-+eE\n\r\t rpmlambd".getBytes(StandardCharsets.US_ASCII);
        for (int run = 0; run < 3000; run++) {
            random.nextBytes(noise);
            if (run % 3 == 0) {
                for (int index = 0; index < noise.length; index++) {
                    noise[index] = likeText[random.nextInt(likeText.length)];
                }
            }
            played.accept(Chunk.copyOf(WIRE, Played.at(0.1 + run * 0.02), noise, noise.length));
        }
        assertThat(played.codes()).contains(FindingCode.WIRE_NOT_TEXT);
        played.accept(new Arrival.Lost(WIRE, Played.at(70), Arrival.Cause.UNPLUGGED, 0))
                .connected(WIRE, 71);
        int before = played.early().stream().mapToInt(samples -> samples.rows()).sum();
        for (int line = 0; line < 50; line++) {
            String text = switch (kind) {
                case SEPARATED -> LINE;
                case PAIRS -> "rpm=3000;torque=180.5;lambda=0.87\n";
                case SENTENCE -> SentenceFrame.of("TXENG,3000,180.5,0.87");
            };
            played.text(WIRE, 72 + line * 0.01, text);
        }
        played.finish(80);
        int after = played.early().stream().mapToInt(samples -> samples.rows()).sum();
        assertThat(after - before).isGreaterThanOrEqualTo(49);
    }

    /** Noise that looks like lines, and a sensor that says a word until it is warm. */
    @ParameterizedTest
    @ValueSource(strings = {"p+,180.5,m-*", "3000,180.5,cold"})
    void columnsThatBeganWithoutNumbersAreUnderstoodOnceNumbersCome(String first) {
        Played played = played(WireFacts.Lines.SEPARATED);
        for (int line = 0; line < 40; line++) {
            played.text(WIRE, 0.1 + line * 0.01, first + "\r\n");
        }
        good(played, 1, 200);
        played.finish(5);
        assertThat(played.values(Role.ENGINE_SPEED)).hasSizeGreaterThan(160);
        assertThat(played.values(Role.LAMBDA)).hasSizeGreaterThan(160);
        assertThat(played.values(Role.TORQUE)).hasSizeGreaterThan(230);
    }

    /** A column of words under the name of a channel is asked about once, not at every line. */
    @Test
    void columnsOfWordsStayLeftOut() {
        Played played = played(WireFacts.Lines.SEPARATED);
        for (int line = 0; line < 500; line++) {
            played.text(WIRE, 0.1 + line * 0.01, line % 2 == 0 ? "3000,180.5,rich\r\n" : "3000,180.5,0.9\r\n");
        }
        played.finish(9);
        assertThat(played.values(Role.ENGINE_SPEED)).hasSizeGreaterThan(490);
        assertThat(played.values(Role.LAMBDA)).isEmpty();
    }

    private static Played played(WireFacts.Lines kind) {
        List<String> columns = kind == WireFacts.Lines.PAIRS ? List.of() : List.of("rpm", "torque [Nm]", "lambda");
        return new Played(WireSource.port(WIRE, new WireSource.LineSettings(kind, columns, 0, 0), "9600 8N1"))
                .connected(WIRE, 0);
    }

    private static void good(Played played, double from, int lines) {
        for (int line = 0; line < lines; line++) {
            played.text(WIRE, from + line * 0.01, LINE);
        }
    }

    /** An asynchronous line, eight data bits, no parity, one stop bit. */
    private static final class Uart {
        private Uart() {}

        static byte[] heard(byte[] sent, double receiverPerSender) {
            boolean[] line = new boolean[sent.length * 10 + 20];
            java.util.Arrays.fill(line, true);
            int bit = 5;
            for (byte b : sent) {
                line[bit++] = false;
                for (int data = 0; data < 8; data++) {
                    line[bit++] = (b >> data & 1) == 1;
                }
                bit++;
            }
            ByteArrayOutputStream heard = new ByteArrayOutputStream();
            double step = 1 / receiverPerSender;
            double at = 0;
            while (at + 10 * step < line.length) {
                if (line[(int) at]) {
                    at += Math.min(step, 1) / 16;
                    continue;
                }
                int value = 0;
                for (int data = 0; data < 8; data++) {
                    value |= line[(int) (at + (data + 1.5) * step)] ? 1 << data : 0;
                }
                heard.write(value);
                at += 9.5 * step;
            }
            return heard.toByteArray();
        }
    }
}
