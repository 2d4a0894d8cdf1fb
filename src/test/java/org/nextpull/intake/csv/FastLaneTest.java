package org.nextpull.intake.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.channel.Block;
import org.nextpull.channel.BlockReader;
import org.nextpull.channel.Channel;
import org.nextpull.channel.LogHints;
import org.nextpull.channel.Samples;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.intake.ByteSource;

/** What the fast lane reads is, bit for bit, what the CSV library reads. */
class FastLaneTest {
    private static final LogFiles FILES = new LogFiles(LogHints.none());

    static Stream<Path> files() throws IOException {
        List<Path> all = new ArrayList<>();
        for (String folder : List.of("src/test/resources/intake/cases", "sample-logs")) {
            try (Stream<Path> files = Files.list(Path.of(folder))) {
                files.filter(Files::isRegularFile)
                        .filter(file -> !file.toString().endsWith(".expect"))
                        .sorted()
                        .forEach(all::add);
            }
        }
        return all.stream();
    }

    @ParameterizedTest
    @MethodSource("files")
    void aFileReadsTheSameOnBothLanes(Path file) throws IOException {
        byte[] good = Files.readAllBytes(file);
        same(file.toString(), good);
        if (good.length < 50_000) {
            same(
                    file + ", spoilt",
                    MutationsTest.spoil(
                            good, new Random(file.getFileName().toString().hashCode())));
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ' ',
            value = {
                "comma point UTF-8",
                "semicolon comma UTF-8",
                "tab comma windows-1252",
                "bar point UTF-16LE",
                "tab point UTF-8"
            })
    void everyDialectReadsTheSameOnBothLanes(String separator, String decimal, String charset) throws IOException {
        char sign = switch (separator) {
            case "comma" -> ',';
            case "semicolon" -> ';';
            case "tab" -> '\t';
            default -> '|';
        };
        Random random = new Random(separator.hashCode() + 31L * charset.hashCode());
        for (String lineEnd : List.of("\n", "\r\n", "\r")) {
            for (String time : List.of("seconds", "clock", "date")) {
                String text = dialect(random, sign, decimal.equals("comma") ? ',' : '.', time, lineEnd);
                same(separator + decimal + charset + time, text.getBytes(Charset.forName(charset)));
            }
        }
    }

    /** More than one buffer of rows with everything in them that a number can be, gaps and fault codes. */
    private static String dialect(Random random, char separator, char decimal, String time, String lineEnd) {
        StringBuilder text = new StringBuilder();
        String[] header = {
            time.equals("seconds") ? "Time [s]" : "Time", "RPM", "Torque", "Lambda", "Temp. \u00e4", "EGT", "Note"
        };
        text.append(String.join(String.valueOf(separator), header)).append(lineEnd);
        text.append(String.join(
                        String.valueOf(separator),
                        time.equals("seconds") ? "s" : "",
                        "rpm",
                        "Nm",
                        "-",
                        "",
                        "\u00b0C",
                        ""))
                .append(lineEnd);
        for (int row = 0; row < 1200; row++) {
            long millis = 20L * row + 36_000_000;
            String seconds = String.format(java.util.Locale.ROOT, "%.3f", millis / 1e3);
            String clock = String.format(
                    java.util.Locale.ROOT,
                    "%02d:%02d:%06.3f",
                    millis / 3_600_000,
                    millis / 60_000 % 60,
                    millis % 60_000 / 1e3);
            String[] cells = {
                time.equals("seconds") ? seconds : time.equals("clock") ? clock : "2026-05-03T" + clock,
                Integer.toString(2000 + row),
                number(random, 200),
                row % 7 == 0 ? "" : number(random, 1),
                row % 11 == 0 ? "NaN" : " " + number(random, 20) + " ",
                row % 13 == 0 ? "99999" : number(random, 700),
                row % 5 == 0 ? "" : "lap " + row
            };
            for (int cell = 0; cell < cells.length; cell++) {
                text.append(cell == 0 ? "" : separator).append(cells[cell].replace('.', decimal));
            }
            text.append(row % 97 == 0 ? lineEnd + lineEnd : lineEnd);
        }
        return text.toString();
    }

    private static String number(Random random, double size) {
        return switch (random.nextInt(6)) {
            case 0 -> Double.toString(size * random.nextDouble());
            case 1 -> String.format(java.util.Locale.ROOT, "%.18f", size * random.nextDouble());
            case 2 -> String.format(java.util.Locale.ROOT, "%.4e", size * random.nextDouble());
            case 3 -> Integer.toString((int) size);
            case 4 -> "+" + String.format(java.util.Locale.ROOT, "%.3f", size * random.nextDouble());
            default -> String.format(java.util.Locale.ROOT, "%.2f", size * random.nextGaussian());
        };
    }

    /** The first column and the last but one are not read; between plain rows stand those that each rule for rows is about. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "7,0.5,3000,100.5,note",
                "7,0.5,3000,100.5",
                "7,0.5,3000,",
                "7,0.5,3000",
                "7",
                ",,,,",
                ",0.5,3000,100.5,note",
                "7,0.5,,100.5,note",
                "7,0.5,3000,100.5,note,9",
                "7,0.5,3000,100.5,note,",
                "# 7,0.5,3000,100.5,note",
                "#,0.5,3000,100.5,note",
                "row,0.5,3000,100.5,note",
                "7,0.5,3000,100.5,\"a, b\"",
                "7,0.5,3000,100.5,\u0001",
                "7,0.5,3000,over,note",
                "7,0.5,high,100.5,note",
                "7, 0.5 ,-3000, +100.5,note",
                "No,Time [s],RPM,Torque [Nm],Note",
                ""
            })
    void aRowOfItsOwnKindAmongPlainOnesReadsTheSameOnBothLanes(String odd) throws IOException {
        StringBuilder text = new StringBuilder("No,Time [s],RPM,Torque [Nm],Note\n");
        for (int row = 0; row < 60; row++) {
            text.append(row)
                    .append(",0.")
                    .append(100 + row)
                    .append(",3000,")
                    .append(row)
                    .append(",x\n");
            text.append(row % 20 == 19 ? odd.replace("0.5", "0." + (1005 + 10 * row)) + "\n" : "");
        }
        same(odd, text.toString().getBytes(StandardCharsets.US_ASCII));
    }

    /** Rows of several pieces, in the last of them a quote. */
    private static byte[] pieces(String lineEnd) {
        StringBuilder text = new StringBuilder("Time [s],RPM,Torque [Nm],Label,Note" + lineEnd);
        for (int row = 0; row < 32_000; row++) {
            text.append(row / 100.0)
                    .append(",3000,")
                    .append(row % 50)
                    .append(",part ")
                    .append(row / 5000)
                    .append(row == 31_000 ? ",\"a, b\"" : ",")
                    .append(lineEnd);
        }
        return text.toString().getBytes(StandardCharsets.US_ASCII);
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r\n", "\r"})
    void aQuoteInALaterPieceHandsOverWithoutLosingARowOrItsLine(String lineEnd) throws IOException {
        byte[] bytes = pieces(lineEnd);
        assertThat(bytes).hasSizeGreaterThan(700_000);
        same("quote", bytes);
        List<Long> lines = read(log("quote", bytes).orElseThrow(), true).lines();
        assertThat(lines).hasSize(32_000).startsWith(2L).endsWith(32_001L);
    }

    @ParameterizedTest
    @ValueSource(ints = {300_000, 600_001, 745_000})
    void aSourceThatBreaksOffGivesTheRowsBeforeTheBreakOnBothLanes(int bytes) throws IOException {
        CsvLog log = log("broken", pieces("\r\n"), bytes).orElseThrow();
        Rows rows = read(log, true);
        assertThat(rows).isEqualTo(read(log, false));
        assertThat(rows.findings()).extracting(Finding::code).contains(FindingCode.FILE_CUT_SHORT);
    }

    /** What came of a log: each cell as its bits, absent ones as words. */
    private record Rows(List<Long> lines, List<String> cells, BlockReader.RowCount count, List<Finding> findings) {}

    private static void same(String name, byte[] bytes) throws IOException {
        Optional<CsvLog> log = log(name, bytes);
        if (log.isPresent()) {
            assertThat(read(log.get(), true)).as(name).isEqualTo(read(log.get(), false));
        }
    }

    private static Optional<CsvLog> log(String name, byte[] bytes) {
        return log(name, bytes, bytes.length);
    }

    /** A log that breaks off behind so many bytes, if those are not all. */
    private static Optional<CsvLog> log(String name, byte[] bytes, int whole) {
        ByteSource source = new ByteSource() {
            @Override
            public String name() {
                return name;
            }

            @Override
            public InputStream open() {
                return new FilterInputStream(new ByteArrayInputStream(bytes, 0, whole)) {
                    @Override
                    public int read(byte[] target, int offset, int length) throws IOException {
                        int count = super.read(target, offset, length);
                        if (count < 0 && whole < bytes.length) {
                            throw new IOException("torn");
                        }
                        return count;
                    }
                };
            }
        };
        return FILES.read(source).value().filter(Input.Log.class::isInstance).map(input ->
                (CsvLog) ((Input.Log) input).recording());
    }

    private static Rows read(CsvLog log, boolean fast) throws IOException {
        List<Long> lines = new ArrayList<>();
        List<String> cells = new ArrayList<>();
        CsvBlockReader opened = new CsvBlockReader(log);
        try (CsvBlockReader reader = fast ? opened : opened.withoutFastLane()) {
            for (Optional<Block> block = reader.next(); block.isPresent(); block = reader.next()) {
                Samples samples = block.get().samples();
                for (int row = 0; row < samples.rows(); row++) {
                    lines.add(samples.line(row));
                    StringBuilder cell = new StringBuilder(samples.label(row) + " " + samples.fuel(row));
                    for (Channel channel : samples.channels()) {
                        cell.append(' ')
                                .append(
                                        samples.isPresent(channel, row)
                                                ? Double.doubleToRawLongBits(samples.value(channel, row))
                                                : "absent");
                    }
                    cells.add(cell.toString());
                }
            }
            return new Rows(lines, cells, reader.rowCount(), reader.findings());
        }
    }
}
