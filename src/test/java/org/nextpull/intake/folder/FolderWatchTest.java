package org.nextpull.intake.folder;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.finding.FindingCode;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.ArrivalQueue;
import org.nextpull.intake.wire.Chunk;
import org.nextpull.intake.wire.SessionClock;

@Timeout(60)
class FolderWatchTest {
    private static final String PULL = "rpm,torque\n3000,180.5\n3100,181.0\n";

    @TempDir
    private Path folder;

    private final ArrivalQueue queue = new ArrivalQueue(SessionClock.system());
    private final List<Arrival.FileComplete> complete = new ArrayList<>();
    private final List<FindingCode> said = new ArrayList<>();
    private final Map<String, ByteArrayOutputStream> sent = new LinkedHashMap<>();
    private FolderWatch watch = new FolderWatch(FolderSettings.usual(Path.of(".")), queue, new FolderMemory());
    private final FolderMemory memory = new FolderMemory();
    private String file = "";
    private long nowMs;

    @BeforeEach
    void watchTheFolder() {
        watch = new FolderWatch(FolderSettings.usual(folder), queue, new FolderMemory());
    }

    @Test
    void aFileThatWasPutThereWholeIsTakenAfterAQuarterOfASecond() throws Exception {
        look(0);
        write("pull 1.csv", PULL);
        look(100);
        look(200);
        assertThat(complete).isEmpty();
        look(50);
        assertThat(complete).singleElement().satisfies(done -> {
            assertThat(done.file()).isEqualTo("pull 1.csv");
            assertThat(done.taken()).isEqualTo(Arrival.Taken.NEW);
            assertThat(done.print().length()).isEqualTo(PULL.length());
        });
        assertThat(sent("pull 1.csv")).isEqualTo(PULL);
        look(10_000);
        assertThat(complete).hasSize(1);
    }

    /** A buffer that is written when it is full ends in the middle of a line, and the next one comes later. */
    @ParameterizedTest
    @ValueSource(strings = {"US-ASCII", "UTF-16LE", "UTF-16BE", "UTF-32"})
    void aFileThatEndsWithinALineIsWaitedForTwiceAsLong(String encoding) throws Exception {
        look(0);
        Files.write(folder.resolve("part.csv"), (PULL + "3200,18").getBytes(encoding));
        Files.write(folder.resolve("whole.csv"), PULL.getBytes(encoding));
        look(100);
        look(250);
        assertThat(complete).extracting(Arrival.FileComplete::file).containsExactly("whole.csv");
        look(249);
        assertThat(complete).hasSize(1);
        look(1);
        assertThat(complete).extracting(Arrival.FileComplete::file).containsExactly("whole.csv", "part.csv");
    }

    @Test
    void whatWasThereBeforeTheStartIsNotTaken() throws Exception {
        write("yesterday.csv", PULL);
        look(0);
        look(5000);
        look(5000);
        assertThat(complete).isEmpty();
        append("yesterday.csv", "3200,182\n");
        look(250);
        look(2100);
        assertThat(sent("yesterday.csv")).isEqualTo("3200,182\n");
        assertThat(complete)
                .singleElement()
                .extracting(Arrival.FileComplete::taken)
                .isEqualTo(Arrival.Taken.EXTENDED);
    }

    @Test
    void aGrowingFileIsFollowedAsItsLinesCome() throws Exception {
        look(0);
        write("day.csv", "rpm,torque\n");
        look(250);
        append("day.csv", "3000,180\n");
        look(250);
        append("day.csv", "3100,181\n");
        look(250);
        assertThat(sent("day.csv")).isEqualTo("rpm,torque\n3000,180\n3100,181\n");
        append("day.csv", "3200,18");
        look(250);
        append("day.csv", "2\n");
        look(250);
        assertThat(sent("day.csv")).endsWith("3200,182\n");
        assertThat(complete).isEmpty();
        look(2100);
        assertThat(complete)
                .singleElement()
                .satisfies(done -> assertThat(done.taken()).isEqualTo(Arrival.Taken.NEW));
    }

    /** The end is told by the file's own pauses: sooner would cut a pull in two whose rows come in longer steps. */
    @ParameterizedTest
    @CsvSource({"50, 500", "125, 500", "200, 800", "250, 1000", "400, 1600", "900, 2000"})
    void aGrowingFileEndsAfterFourOfItsPausesAndTwoSecondsAtTheMost(long pauseMs, long waitMs) throws Exception {
        look(0);
        write("day.csv", "rpm,torque\n");
        for (int row = 0; row < 5; row++) {
            look(pauseMs);
            append("day.csv", "3" + row + "00,180\n");
        }
        look(pauseMs);
        look(waitMs - 1);
        assertThat(complete).isEmpty();
        look(1);
        assertThat(complete).hasSize(1);
    }

    @Test
    void aFileWithAnotherNameOrACopyIsNotTakenTwice() throws Exception {
        look(0);
        write("a.csv", PULL);
        look(0);
        look(2100);
        Files.move(folder.resolve("a.csv"), folder.resolve("b.csv"));
        look(250);
        look(2100);
        assertThat(said).isEmpty();
        Files.copy(folder.resolve("b.csv"), folder.resolve("copy of b.csv"));
        look(250);
        look(2100);
        assertThat(complete).hasSize(1);
        assertThat(said).isEmpty();
        assertThat(sent).containsOnlyKeys("a.csv");
    }

    @Test
    void aFileThatIsNoLogByItsNameIsSaidOnce() throws Exception {
        write("before.bin", PULL);
        look(0);
        write("run 1.bin", PULL);
        write("run 1.csv.tmp", PULL);
        look(100);
        look(100);
        assertThat(said).containsExactly(FindingCode.FOLDER_FILE_NO_LOG);
        assertThat(complete).isEmpty();
    }

    @Test
    void aCopyBesideItsOriginalIsSaid() throws Exception {
        look(0);
        write("a.csv", PULL);
        look(0);
        look(2100);
        Files.copy(folder.resolve("a.csv"), folder.resolve("b.csv"));
        look(250);
        look(2100);
        assertThat(complete).hasSize(1);
        assertThat(said).containsExactly(FindingCode.FOLDER_FILE_KNOWN);
    }

    @Test
    void aFileWrittenUnderAnotherNameAndThenRenamedIsTakenWhole() throws Exception {
        look(0);
        write("pull.csv.part", PULL.substring(0, 20));
        look(250);
        append("pull.csv.part", PULL.substring(20));
        look(250);
        Files.move(folder.resolve("pull.csv.part"), folder.resolve("pull.csv"), StandardCopyOption.ATOMIC_MOVE);
        look(250);
        look(2100);
        assertThat(complete)
                .singleElement()
                .extracting(Arrival.FileComplete::file)
                .isEqualTo("pull.csv");
        assertThat(sent).containsOnlyKeys("pull.csv");
        assertThat(sent("pull.csv")).isEqualTo(PULL);
    }

    @Test
    void aFollowedFileThatGetsAnotherNameGoesOnWhereItWas() throws Exception {
        look(0);
        write("a.csv", "rpm\n");
        look(250);
        append("a.csv", "3000\n");
        look(250);
        append("a.csv", "3100\n");
        look(250);
        Files.move(folder.resolve("a.csv"), folder.resolve("b.csv"));
        append("b.csv", "3200\n");
        look(250);
        look(2100);
        assertThat(sent("a.csv") + sent("b.csv")).isEqualTo("rpm\n3000\n3100\n3200\n");
        assertThat(complete)
                .singleElement()
                .extracting(Arrival.FileComplete::file)
                .isEqualTo("b.csv");
    }

    @Test
    void aFileWrittenAnewIsTakenAgainAndSaid() throws Exception {
        look(0);
        write("last.csv", PULL);
        look(0);
        look(2100);
        write("last.csv", PULL.replace("180.5", "190.5"));
        Files.setLastModifiedTime(folder.resolve("last.csv"), FileTime.fromMillis(12_345));
        look(250);
        look(2100);
        assertThat(complete)
                .extracting(Arrival.FileComplete::taken)
                .containsExactly(Arrival.Taken.NEW, Arrival.Taken.REWRITTEN);
        assertThat(said).containsExactly(FindingCode.FOLDER_FILE_REWRITTEN);
        assertThat(sent("last.csv")).isEqualTo(PULL.replace("180.5", "190.5"));
    }

    @Test
    void touchedWithoutANewContentNothingHappens() throws Exception {
        look(0);
        write("a.csv", PULL);
        look(0);
        look(2100);
        Files.setLastModifiedTime(folder.resolve("a.csv"), FileTime.fromMillis(99_000));
        look(250);
        look(2100);
        assertThat(complete).hasSize(1);
        assertThat(said).isEmpty();
    }

    @Test
    void aFileThatGotMoreLinesIsGoneOnWith() throws Exception {
        look(0);
        write("day.csv", PULL);
        look(0);
        look(2100);
        append("day.csv", "3200,182\n");
        look(250);
        assertThat(sent("day.csv")).isEqualTo(PULL + "3200,182\n");
        look(2100);
        assertThat(complete)
                .extracting(Arrival.FileComplete::taken)
                .containsExactly(Arrival.Taken.NEW, Arrival.Taken.EXTENDED);
    }

    @Test
    void roomSetAsideWithZerosIsNotTakenForContent() throws Exception {
        look(0);
        write("a.csv", "rpm,torque\n" + "\0".repeat(100));
        look(250);
        look(5000);
        assertThat(complete).isEmpty();
        write("a.csv", PULL);
        look(250);
        look(2100);
        assertThat(complete).hasSize(1);
        assertThat(sent("a.csv")).isEqualTo(PULL);
    }

    @Test
    void aLogInUtf16WhoseLastByteIsZeroIsTaken() throws Exception {
        byte[] bytes = ("\ufeff" + PULL).getBytes(StandardCharsets.UTF_16LE);
        look(0);
        Files.write(folder.resolve("a.csv"), bytes);
        look(250);
        look(2100);
        assertThat(complete)
                .singleElement()
                .satisfies(done -> assertThat(done.print().length()).isEqualTo(bytes.length));
    }

    @Test
    void aLinkThatLeadsToItselfLeavesTheOthersReadable() throws Exception {
        look(0);
        Files.createSymbolicLink(folder.resolve("loop.csv"), Path.of("loop.csv"));
        write("a.csv", PULL);
        look(250);
        look(2100);
        assertThat(said).isEmpty();
        assertThat(complete).extracting(Arrival.FileComplete::file).containsExactly("a.csv");
    }

    @Test
    void onlyVisibleLogsAreTaken() throws Exception {
        look(0);
        write("a.xlsx", PULL);
        write(".hidden.csv", PULL);
        write("~$a.csv", PULL);
        write("a.csv.tmp", PULL);
        Files.createDirectory(folder.resolve("folder.csv"));
        write("empty.csv", "");
        look(250);
        look(5000);
        assertThat(complete).isEmpty();
    }

    @Test
    void aFolderThatGoesAndComesAgainIsSaidOnceEach() throws Exception {
        Path share = Files.createDirectory(folder.resolve("share"));
        watch = new FolderWatch(FolderSettings.usual(share), queue, new FolderMemory());
        look(0);
        Files.delete(share);
        look(250);
        look(250);
        Files.createDirectory(share);
        Files.writeString(share.resolve("a.csv"), PULL);
        look(250);
        look(2100);
        assertThat(said).containsExactly(FindingCode.FOLDER_NOT_READABLE, FindingCode.FOLDER_READABLE_AGAIN);
        assertThat(complete).hasSize(1);
    }

    @Test
    void startedAgainItTakesWhatIsNewAndNothingTwice() throws Exception {
        look(0);
        write("a.csv", PULL);
        look(0);
        look(2100);
        write("b.csv", PULL + "1,2\n");
        startAgain();
        look(0);
        look(2100);
        look(2100);
        assertThat(complete).extracting(Arrival.FileComplete::file).containsExactly("a.csv", "b.csv");
    }

    @Test
    void logsThatWereThereBeforeTheSessionAreNamedAndStayOutOfIt() throws Exception {
        write("last week.csv", PULL);
        look(0);
        look(2100);
        assertThat(said).containsExactly(FindingCode.FOLDER_LOGS_BEFORE);
        assertThat(complete).isEmpty();
        write("a.csv", PULL + "1,2\n");
        look(0);
        look(2100);
        startAgain();
        write("b.csv", PULL + "1,3\n");
        look(0);
        look(2100);
        assertThat(complete).extracting(Arrival.FileComplete::file).containsExactly("a.csv", "b.csv");
        assertThat(said).hasSize(1);
        write("copy of last week.csv", PULL);
        look(250);
        look(2100);
        assertThat(complete).extracting(Arrival.FileComplete::file).contains("copy of last week.csv");
    }

    @Test
    void aLogThatWasThereBeforeAndGrewWhileNobodyLookedIsGoneOnWith() throws Exception {
        write("season.csv", PULL);
        look(0);
        append("season.csv", "3200,182.0\n");
        startAgain();
        look(0);
        look(2100);
        assertThat(sent("season.csv")).isEqualTo("3200,182.0\n");
        assertThat(complete)
                .singleElement()
                .extracting(Arrival.FileComplete::taken)
                .isEqualTo(Arrival.Taken.EXTENDED);
        startAgain();
        look(0);
        look(2100);
        assertThat(complete).hasSize(1);
    }

    /** Another program that writes, appends, renames and rewrites as it likes; every content that rests is taken, each once. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void whateverIsDoneToTheFilesEachContentThatRestsIsTakenOnce(long seed) throws Exception {
        Random random = new Random(seed);
        look(0);
        int line = 0;
        for (int step = 0; step < 150; step++) {
            String name = "f" + random.nextInt(4) + ".csv";
            Path path = folder.resolve(name);
            int what = random.nextInt(6);
            if (what <= 1 || !Files.exists(path)) {
                write(name, "rpm\n" + line++ + "\n".repeat(1 + random.nextInt(3)));
                Files.setLastModifiedTime(path, FileTime.fromMillis(1000L * line));
            } else if (what <= 4) {
                append(name, line++ + "\n");
            } else {
                Files.move(path, folder.resolve("r" + line++ + ".csv"));
            }
            look(random.nextInt(900));
        }
        for (int rest = 0; rest < 3; rest++) {
            look(2100);
        }
        assertThat(complete).extracting(Arrival.FileComplete::print).doesNotHaveDuplicates();
        for (Map.Entry<String, WatchedFile.Stamp> entry :
                WatchedFile.Stamp.inFolder(folder, FolderSettings::isLog).entrySet()) {
            byte[] bytes = Files.readAllBytes(folder.resolve(entry.getKey()));
            java.security.MessageDigest digest = org.nextpull.intake.wire.Fingerprint.digest();
            digest.update(bytes);
            assertThat(complete)
                    .as(entry.getKey())
                    .anyMatch(
                            done -> done.print().equals(org.nextpull.intake.wire.Fingerprint.of(bytes.length, digest)));
        }
    }

    @Test
    void theReaderLooksByItself() throws Exception {
        write("before.csv", PULL + "4000\n");
        watch = new FolderWatch(new FolderSettings(folder, 100), queue, new FolderMemory());
        try (FolderReader reader = FolderReader.start(watch, queue)) {
            assertThat(reader).isNotNull();
            Optional<Arrival> arrival = queue.take(10_000);
            assertThat(arrival).get().isInstanceOf(Arrival.Connected.class);
            // the log of before is passed over at the first look; only then is another one new
            while (!(arrival.orElseThrow() instanceof Arrival.FromFile)) {
                arrival = queue.take(10_000);
            }
            write("a.csv", PULL);
            while (!(arrival.orElseThrow() instanceof Arrival.FileComplete whole
                    && whole.file().equals("a.csv"))) {
                arrival = queue.take(10_000);
            }
        }
        assertThat(queue.take(0)).get().isInstanceOf(Arrival.Lost.class);
    }

    /** As after a kill: all that is known is what the capture holds. */
    private void startAgain() {
        memory.see(new Arrival.Connected(folder.toString(), queue.now()));
        watch = new FolderWatch(FolderSettings.usual(folder), queue, memory);
    }

    private void look(long laterMs) throws InterruptedException {
        nowMs += laterMs;
        watch.look(nowMs * 1_000_000);
        for (Optional<Arrival> next = queue.take(0); next.isPresent(); next = queue.take(0)) {
            Arrival arrival = next.get();
            memory.see(arrival);
            if (arrival instanceof Arrival.FromFile from) {
                file = from.file();
                if (from.atByte() == 0) {
                    sent.put(file, new ByteArrayOutputStream());
                }
            } else if (arrival instanceof Chunk chunk) {
                sent.computeIfAbsent(file, name -> new ByteArrayOutputStream()).writeBytes(chunk.toArray());
            } else if (arrival instanceof Arrival.FileComplete done) {
                complete.add(done);
            } else if (arrival instanceof Arrival.Trouble trouble) {
                said.add(trouble.finding().code());
            }
        }
    }

    private String sent(String name) {
        return sent.getOrDefault(name, new ByteArrayOutputStream()).toString(StandardCharsets.UTF_8);
    }

    private void write(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
    }

    private void append(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text, StandardOpenOption.APPEND);
    }
}
