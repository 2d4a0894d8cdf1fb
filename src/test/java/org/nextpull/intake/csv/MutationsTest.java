package org.nextpull.intake.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.nextpull.channel.Block;
import org.nextpull.channel.BlockReader;
import org.nextpull.channel.Channel;
import org.nextpull.channel.LogHints;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.finding.Finding;
import org.nextpull.finding.Outcome;
import org.nextpull.intake.ByteSource;

/** Good and odd files, spoilt at random: whatever comes, there is an answer, no exception, and time rises. */
class MutationsTest {
    private static final int ROUNDS = 12;
    private static final byte[] SIGNS =
            "\",;\t|\n\r .-+eE0\0#%'\u00b0N".getBytes(java.nio.charset.StandardCharsets.UTF_8);

    static Stream<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("src/test/resources/intake/cases"))) {
            return files.filter(file -> !file.toString().endsWith(".expect")).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void aSpoiltFileGivesSamplesOrFindingsAndNeverFails(Path file) throws IOException {
        byte[] good = Files.readAllBytes(file);
        for (int round = 0; round < ROUNDS; round++) {
            long seed = 31L * file.getFileName().toString().hashCode() + round;
            byte[] spoilt = spoil(good, new Random(seed));
            Outcome<Input> outcome = new LogFiles(LogHints.none()).read(new Bytes(file.toString(), spoilt));
            if (outcome.value().orElse(null) instanceof Input.Log log) {
                check(log, "seed " + seed);
            } else if (outcome.isFailed()) {
                assertThat(outcome.findings()).as("seed %d", seed).anyMatch(Finding::isError);
            }
            SettingsFile.read(new Bytes(file.toString(), spoilt));
        }
    }

    private static void check(Input.Log log, String seed) throws IOException {
        long rows = 0;
        double last = Double.NEGATIVE_INFINITY;
        Channel time = Channel.of(Role.TIME);
        try (BlockReader reader = log.recording().open()) {
            for (Optional<Block> block = reader.next(); block.isPresent(); block = reader.next()) {
                Samples samples = block.get().samples();
                rows += samples.rows();
                for (int row = 0; row < samples.rows(); row++) {
                    if (samples.isPresent(time, row)) {
                        assertThat(samples.value(time, row)).as(seed).isGreaterThan(last);
                        last = samples.value(time, row);
                    }
                }
            }
            assertThat(reader.rowCount().good()).as(seed).isEqualTo(rows);
            if (rows == 0) {
                assertThat(reader.findings()).as(seed).anyMatch(Finding::isError);
            }
        }
    }

    static byte[] spoil(byte[] good, Random random) {
        byte[] bytes = good.clone();
        for (int change = random.nextInt(8); change >= 0 && bytes.length > 0; change--) {
            int at = random.nextInt(bytes.length);
            switch (random.nextInt(6)) {
                case 0 -> bytes[at] = (byte) random.nextInt(256);
                case 1 -> bytes[at] = SIGNS[random.nextInt(SIGNS.length)];
                case 2 ->
                    bytes = joined(
                            Arrays.copyOf(bytes, at),
                            Arrays.copyOfRange(
                                    bytes, Math.min(bytes.length, at + 1 + random.nextInt(30)), bytes.length));
                case 3 -> bytes = Arrays.copyOf(bytes, at);
                case 4 -> bytes = joined(bytes, Arrays.copyOfRange(bytes, at, bytes.length));
                default ->
                    bytes = joined(
                            joined(Arrays.copyOf(bytes, at), new byte[] {SIGNS[random.nextInt(SIGNS.length)]}),
                            Arrays.copyOfRange(bytes, at, bytes.length));
            }
        }
        return bytes;
    }

    private static byte[] joined(byte[] left, byte[] right) {
        byte[] both = Arrays.copyOf(left, left.length + right.length);
        System.arraycopy(right, 0, both, left.length, right.length);
        return both;
    }

    /** A source in memory. */
    private static final class Bytes implements ByteSource {
        private final String name;
        private final byte[] bytes;

        Bytes(String name, byte[] bytes) {
            this.name = name;
            this.bytes = bytes;
        }

        @Override
        public String name() {
            return name;
        }

        @Override
        public InputStream open() {
            return new ByteArrayInputStream(bytes);
        }
    }
}
