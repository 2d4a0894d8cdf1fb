package org.nextpull.intake.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.zip.GZIPOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.channel.Block;
import org.nextpull.channel.BlockReader;
import org.nextpull.channel.Channel;
import org.nextpull.channel.LogHints;
import org.nextpull.channel.Role;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;

class LogFilesTest {
    private static final String LOG = "time (s),rpm,torque (Nm)\n0,2500,150\n0.1,2600,151\n";
    private static final String TABLE = "advance_deg,torque_nm\n20,190\n22,193\n";

    @TempDir
    Path folder;

    private final LogFiles files = new LogFiles(LogHints.none());

    @BeforeEach
    void writeADay() throws IOException {
        write("pull-10.csv", LOG);
        write("pull-2.csv", LOG);
        write("pull-1.txt", LOG);
        write("table.csv", TABLE);
        write("empty.csv", "");
        write("plan.toml", "[engine]\n");
        write(".hidden.csv", LOG);
        try (OutputStream out = new GZIPOutputStream(Files.newOutputStream(folder.resolve("pull-3.csv.gz")))) {
            out.write(LOG.getBytes(StandardCharsets.UTF_8));
        }
        try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(folder.resolve("pull-4.zip")))) {
            for (String name : List.of("b-11.csv", "b-9.csv", "read-me.pdf")) {
                out.putNextEntry(new ZipEntry("day/" + name));
                out.write(LOG.getBytes(StandardCharsets.UTF_8));
            }
        }
    }

    private void write(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
    }

    private List<String> names(Inputs inputs) {
        return inputs.good().stream()
                .map(input ->
                        folder.relativize(Path.of(input.name())).toString().replace('\\', '/'))
                .toList();
    }

    @Test
    void aHeaderOfTooManyColumnsSpoilsItsOwnFileOnlyAndAWideRowItself() throws IOException {
        Path day = Files.createDirectory(folder.resolve("day"));
        Files.writeString(day.resolve("a.csv"), LOG + "1,".repeat(17_000) + "\n");
        Files.writeString(day.resolve("b.csv"), "rpm,".repeat(17_000) + "\n" + LOG);
        Files.writeString(day.resolve("c.csv"), LOG);
        Inputs inputs = files.read(List.of(day.toString()));
        assertThat(names(inputs)).containsExactly("day/a.csv", "day/c.csv");
        assertThat(codes(inputs)).containsExactly(FindingCode.FILE_TOO_WIDE);
    }

    /** Eleven hundred names of thirty characters and more: the header alone is longer than what is looked at to find the form. */
    @Test
    void aHeaderThatIsLongerThanTheRowsBelowItIsPartedAsTheyAre() throws IOException {
        String names = IntStream.range(0, 1100)
                .mapToObj(number -> "oil exhaust temp raw air sensor " + number + ",")
                .collect(Collectors.joining());
        write("wide.csv", names + LOG.replace("\n0", "\n" + "1,".repeat(1100) + "0"));
        Input.Log log = files.read(List.of(folder.resolve("wide.csv").toString()))
                .logs()
                .get(0);
        assertThat(log.description().columns()).hasSize(1103);
        assertThat(log.description().separator()).isEqualTo(",");
    }

    @Test
    void aLineWithoutEndIsLeftOutAndSaid() throws IOException {
        write("long.csv", LOG + "1".repeat(3 * TidyReader.LONGEST_LINE) + "\n0.2,2700,152\n");
        write("long-first.csv", "1".repeat(TidyReader.LONGEST_LINE) + "\n" + LOG);
        assertThat(codesOfRows("long.csv")).containsExactly(FindingCode.LINE_TOO_LONG);
        assertThat(codes(files.read(List.of(folder.resolve("long-first.csv").toString()))))
                .containsExactly(FindingCode.LINE_TOO_LONG);
    }

    @Test
    void saysOfALineThatDoesNotEndHowMuchOfItWasSeen() throws IOException {
        String header = LOG.lines().findFirst().orElseThrow() + "\n";
        write("open.csv", header + "1".repeat(FirstPart.MOST_CHARS));
        Finding finding = files.read(List.of(folder.resolve("open.csv").toString()))
                .findings()
                .get(0);
        assertThat(finding.code()).isEqualTo(FindingCode.LINE_TOO_LONG);
        assertThat(finding.place().line()).hasValue(2);
        assertThat(finding.details()).containsExactly(Detail.of("most", FirstPart.MOST_CHARS - header.length()));
    }

    /** Whether or not one of its names is known, and whether or not a row of values is seen too. */
    @ParameterizedTest
    @ValueSource(ints = {3000, 20_000, 35_000})
    void aHeaderOfNamesThatNobodyKnowsMayBeTooWideToo(int columns) throws IOException {
        write("wide.csv", "v,".repeat(columns) + "v\n" + "1.25,".repeat(columns) + "1.25\n");
        Finding finding = files.read(List.of(folder.resolve("wide.csv").toString()))
                .findings()
                .get(0);
        assertThat(finding.code()).isEqualTo(FindingCode.FILE_TOO_WIDE);
        assertThat(finding.details()).contains(Detail.of("count", columns + 1));
    }

    @Test
    void aTableOfMoreRowsThanATableHasIsNoLogWithoutSpeed() throws IOException {
        String rows = "1,20,0.9,190,a\n".repeat(TableRecognition.MOST_ROWS);
        String header = "order,advance_deg,lambda,torque_nm,label\n";
        write("table.csv", header + rows);
        write("long-table.csv", header + rows + "1,20,0.9,190,a\n");
        assertThat(codes(files.read(List.of(folder.resolve("table.csv").toString()))))
                .doesNotContain(FindingCode.TABLE_TOO_LONG);
        assertThat(codes(files.read(List.of(folder.resolve("long-table.csv").toString()))))
                .containsExactly(FindingCode.TABLE_TOO_LONG);
    }

    @Test
    void whatIsPackedTwiceIsNoWorkbook() throws IOException {
        zip("inner.zip", "a.csv", LOG.getBytes(StandardCharsets.UTF_8));
        byte[] inner = Files.readAllBytes(folder.resolve("inner.zip"));
        zip("nested.zip", "inner.zip", inner);
        Files.write(folder.resolve("zip.gz"), gzipped(inner));
        Files.write(folder.resolve("twice.csv.gz"), gzipped(gzipped(LOG.getBytes(StandardCharsets.UTF_8))));
        for (String name : List.of("nested.zip", "zip.gz", "twice.csv.gz")) {
            assertThat(codes(files.read(List.of(folder.resolve(name).toString()))))
                    .as(name)
                    .containsExactly(FindingCode.FILE_PACKED_TWICE);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"[Content_Types].xml", "mimetype", "_rels/.rels", "docProps/app.xml", "xl/workbook.bin"})
    void aWorkbookIsToldByItsFirstPart(String part) throws IOException {
        zip("book.xlsx", part, new byte[10]);
        zip("packed.zip", "book.csv", Files.readAllBytes(folder.resolve("book.xlsx")));
        assertThat(codes(files.read(List.of(folder.resolve("packed.zip").toString()))))
                .containsExactly(FindingCode.FILE_IS_WORKBOOK);
    }

    @Test
    void aZipOfNothingHoldsNoLog() throws IOException {
        new ZipOutputStream(Files.newOutputStream(folder.resolve("none.zip"))).close();
        assertThat(codes(files.read(List.of(folder.resolve("none.zip").toString()))))
                .containsExactly(FindingCode.FOLDER_WITHOUT_LOGS);
    }

    private void zip(String name, String entry, byte[] bytes) throws IOException {
        try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(folder.resolve(name)))) {
            out.putNextEntry(new ZipEntry(entry));
            out.write(bytes);
        }
    }

    private static byte[] gzipped(byte[] bytes) throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (GZIPOutputStream out = new GZIPOutputStream(packed)) {
            out.write(bytes);
        }
        return packed.toByteArray();
    }

    /** A car's logger may write any number of columns of one name. */
    @Test
    void manyColumnsAreNotAllNamed() throws IOException {
        write("car.csv", "Gear,".repeat(100) + "Gear\n" + "1,".repeat(100) + "1\n");
        Finding finding = files.read(List.of(folder.resolve("car.csv").toString()))
                .findings()
                .get(0);
        assertThat(finding.text("unknown").orElseThrow()).hasSizeLessThan(150).endsWith("Gear and 81 more");
    }

    @Test
    void controlCharactersThatAreTakenOutAreSaid() throws IOException {
        write("nul.csv", LOG + "0.2,27\0" + "00,152\n\u001a");
        assertThat(codesOfRows("nul.csv")).containsExactly(FindingCode.CONTROL_CHARACTERS);
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-32LE", "UTF-32BE", "X-UTF-32LE-BOM", "X-UTF-32BE-BOM"})
    void readsCharactersOfFourBytes(String charset) throws IOException {
        Files.writeString(folder.resolve("wide.csv"), LOG, Charset.forName(charset));
        assertThat(codesOfRows("wide.csv")).isEmpty();
    }

    @Test
    void aZipThatUnpacksToMoreThanAnyLogIsNotRead() throws IOException {
        Path zip = folder.resolve("bomb.zip");
        try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(zip))) {
            out.setLevel(1);
            out.putNextEntry(new ZipEntry("a.csv"));
            byte[] zeros = new byte[1 << 20];
            for (int i = 0; i < 65; i++) {
                out.write(zeros);
            }
        }
        assertThat(codes(files.read(List.of(zip.toString())))).containsExactly(FindingCode.FILE_OVERPACKED);
    }

    private static List<FindingCode> codes(Inputs inputs) {
        return inputs.findings().stream().map(Finding::code).toList();
    }

    /** Warnings on the rows of a log, of which at least two are good. */
    private List<FindingCode> codesOfRows(String name) throws IOException {
        Inputs inputs = files.read(List.of(folder.resolve(name).toString()));
        try (BlockReader reader = ((Input.Log) inputs.good().get(0)).recording().open()) {
            while (reader.next().isPresent()) {}
            assertThat(reader.rowCount().good()).isBetween(2L, 3L);
            return reader.findings().stream()
                    .filter(finding -> finding.severity() == Finding.Severity.WARNING)
                    .map(Finding::code)
                    .toList();
        }
    }

    @Test
    void aFolderGivesItsLogsInNaturalOrderAndSaysWhatItPassedOver() {
        Inputs inputs = files.read(List.of(folder.toString()));
        assertThat(names(inputs))
                .containsExactly(
                        "pull-1.txt",
                        "pull-2.csv",
                        "pull-3.csv.gz",
                        "pull-4.zip/day/b-9.csv",
                        "pull-4.zip/day/b-11.csv",
                        "pull-10.csv",
                        "table.csv");
        assertThat(inputs.tables()).hasSize(1);
        assertThat(inputs.someFailed()).isTrue();
        assertThat(inputs.findings())
                .extracting(finding -> finding.code())
                .contains(FindingCode.FILE_EMPTY, FindingCode.FOLDER_FILES_PASSED_OVER)
                .doesNotContain(FindingCode.FILE_NOT_FOUND);
    }

    @Test
    void aGlobGivesItsMatchesInNaturalOrder() {
        Inputs inputs = files.read(List.of(folder + "/pull-*.csv"));
        assertThat(names(inputs)).containsExactly("pull-2.csv", "pull-10.csv");
        assertThat(inputs.someFailed()).isFalse();
        assertThat(names(files.read(List.of(folder + "/pull-[12].{csv,txt}"))))
                .containsExactly("pull-1.txt", "pull-2.csv");
        assertThat(files.read(List.of(folder + "/none-*.csv")).someFailed()).isTrue();
    }

    @Test
    void theOrderOfTheArgumentsStandsAndAFileNamedTwiceIsReadOnce() {
        String ten = folder.resolve("pull-10.csv").toString();
        String two = folder.resolve("pull-2.csv").toString();
        Inputs inputs = files.read(List.of(ten, two, ten));
        assertThat(names(inputs)).containsExactly("pull-10.csv", "pull-2.csv");
        assertThat(inputs.findings())
                .extracting(finding -> finding.code())
                .containsExactly(FindingCode.FILE_NAMED_TWICE);
    }

    @Test
    void badFilesDoNotSpoilTheGoodOnesAndEachIsNamed() {
        Inputs inputs = files.read(List.of(
                folder.resolve("none.csv").toString(),
                folder.resolve("pull-2.csv").toString(),
                folder.resolve("empty.csv").toString(),
                folder.resolve("plan.toml").toString(),
                "\0"));
        assertThat(names(inputs)).containsExactly("pull-2.csv");
        assertThat(inputs.findings()).hasSize(4).allSatisfy(finding -> {
            assertThat(finding.isError()).isTrue();
            assertThat(finding.place().file()).isPresent();
        });
    }

    @Test
    void aPackedLogReadsLikeThePlainOneAnyNumberOfTimes() throws IOException {
        for (String name : List.of("pull-2.csv", "pull-3.csv.gz", "pull-4.zip")) {
            Input.Log log =
                    files.read(List.of(folder.resolve(name).toString())).logs().get(0);
            for (int round = 0; round < 2; round++) {
                try (BlockReader reader = log.recording().open()) {
                    Block block = reader.next().orElseThrow();
                    assertThat(block.samples().presentValues(Channel.of(Role.TORQUE)))
                            .containsExactly(150, 151);
                    assertThat(reader.next()).isEmpty();
                }
            }
        }
    }

    @Test
    void aLongLogComesInBlocksThatAreNeverLongerThanAllowed() throws IOException {
        StringBuilder text = new StringBuilder("time (s),rpm,torque (Nm)\n");
        int rows = 3 * Block.MOST_ROWS + 17;
        for (int row = 0; row < rows; row++) {
            text.append(row / 100.0).append(',').append(2000 + row % 4000).append(",150\n");
        }
        write("long.csv", text.toString());
        Input.Log log = files.read(List.of(folder.resolve("long.csv").toString()))
                .logs()
                .get(0);
        long seen = 0;
        try (BlockReader reader = log.recording().open()) {
            for (Optional<Block> block = reader.next(); block.isPresent(); block = reader.next()) {
                assertThat(block.get().samples().rows()).isBetween(1, Block.MOST_ROWS);
                assertThat(block.get().samples().line(0)).isEqualTo(seen + 2);
                seen += block.get().samples().rows();
            }
            assertThat(reader.rowCount().good()).isEqualTo(rows);
        }
        assertThat(seen).isEqualTo(rows);
    }
}
