package org.nextpull.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Random;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;

class NotebookTroubleTest {
    @TempDir
    private Path folder;

    private Path file() {
        return folder.resolve("notebook.db");
    }

    private static FindingCode code(ThrowingCallable call) {
        return finding(call).code();
    }

    private static Finding finding(ThrowingCallable call) {
        NotebookException refused = catchThrowableOfType(NotebookException.class, call);
        assertThat(refused).as("refused in words").isNotNull();
        return refused.finding();
    }

    private void sql(String... statements) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file());
                Statement statement = connection.createStatement()) {
            for (String sql : statements) {
                statement.execute(sql);
            }
        }
    }

    private long oneSession() throws IOException {
        try (Notebook notebook = Notebook.open(file())) {
            return SampleDays.keep(notebook, SampleDays.of("hillclimb-e10-timing"));
        }
    }

    @Test
    void aNotebookThatIsNotThereIsOnlyMadeByWriting() throws IOException {
        assertThat(code(() -> Notebook.openReadOnly(file()))).isEqualTo(FindingCode.NOTEBOOK_MISSING);
        Path deep = folder.resolve("a/b/c.db");
        Notebook.open(deep).close();
        assertThat(deep).exists();
        Notebook.openReadOnly(deep).close();
    }

    @ParameterizedTest
    @ValueSource(strings = {"time,rpm,torque\n0,2000,100\n", "x", "SQLite format 3\u0000 and then nonsense"})
    void aFileThatIsNoDatabaseIsRefused(String text) throws IOException {
        Files.writeString(file(), text.repeat(300));
        assertThat(code(() -> Notebook.open(file()))).isEqualTo(FindingCode.NOTEBOOK_NOT_ONE);
        assertThat(code(() -> Notebook.openReadOnly(file()))).isEqualTo(FindingCode.NOTEBOOK_NOT_ONE);
        assertThat(file()).content().startsWith(text);
    }

    @Test
    void aDatabaseOfAnotherProgramIsRefusedAndLeftAlone() throws IOException, SQLException {
        sql("create table customers (name text)");
        byte[] before = Files.readAllBytes(file());
        assertThat(code(() -> Notebook.open(file()))).isEqualTo(FindingCode.NOTEBOOK_OF_ANOTHER);
        assertThat(code(() -> Notebook.openReadOnly(file()))).isEqualTo(FindingCode.NOTEBOOK_OF_ANOTHER);
        assertThat(Files.readAllBytes(file())).isEqualTo(before);
    }

    @Test
    void anEmptyFileBecomesANotebook() throws IOException {
        Files.createFile(file());
        try (Notebook notebook = Notebook.open(file())) {
            assertThat(notebook.list()).isEmpty();
        }
    }

    @Test
    void aNotebookOfANewerProgramIsRefused() throws IOException, SQLException {
        oneSession();
        sql("pragma user_version = " + (Schema.newest() + 1));
        Finding finding = finding(() -> Notebook.open(file()));
        assertThat(finding.code()).isEqualTo(FindingCode.NOTEBOOK_NEWER);
        assertThat(finding.number("version")).hasValue(Schema.newest() + 1);
        assertThat(code(() -> Notebook.openReadOnly(file()))).isEqualTo(FindingCode.NOTEBOOK_NEWER);
    }

    @Test
    void aFileThatMayNotBeWrittenCanStillBeRead() throws IOException {
        long id = oneSession();
        assertThat(file().toFile().setWritable(false)).isTrue();
        Assumptions.assumeFalse(Files.isWritable(file()), "whoever runs this may write everything");
        assertThat(code(() -> Notebook.open(file()))).isEqualTo(FindingCode.NOTEBOOK_READ_ONLY);
        try (Notebook notebook = Notebook.openReadOnly(file())) {
            assertThat(notebook.session(id).sources()).hasSize(1);
        }
    }

    @Test
    void readingNeverWrites() throws IOException {
        long id = oneSession();
        try (Notebook notebook = Notebook.openReadOnly(file())) {
            assertThat(code(() -> notebook.close(id, SampleDays.MORNING))).isEqualTo(FindingCode.NOTEBOOK_READ_ONLY);
        }
    }

    @Test
    void aFolderInItsPlaceAndAFileInThePlaceOfItsFolderAreSaid() throws IOException {
        Files.createDirectory(file());
        assertThat(code(() -> Notebook.open(file()))).isEqualTo(FindingCode.NOTEBOOK_CANNOT_OPEN);
        Path blocked = Files.createFile(folder.resolve("plain")).resolve("notebook.db");
        assertThat(code(() -> Notebook.open(blocked))).isEqualTo(FindingCode.NOTEBOOK_CANNOT_OPEN);
    }

    @Test
    void aSessionThatIsNotThereIsSaid() throws IOException {
        oneSession();
        SampleDays.Day day = SampleDays.of("hillclimb-e10-timing");
        try (Notebook notebook = Notebook.open(file())) {
            assertThat(code(() -> notebook.session(99))).isEqualTo(FindingCode.NOTEBOOK_NO_SUCH_SESSION);
            assertThat(code(() -> notebook.close(99, SampleDays.MORNING)))
                    .isEqualTo(FindingCode.NOTEBOOK_NO_SUCH_SESSION);
            assertThat(code(() -> notebook.keepPull(99, SampleDays.MORNING, day.input(), day.result())))
                    .isEqualTo(FindingCode.NOTEBOOK_NO_SUCH_SESSION);
        }
    }

    @Test
    void aFullDiskIsSaidAndWhatWasKeptIsStillThere() throws IOException, SQLException {
        SampleDays.Day day = SampleDays.of("hillclimb-e10-timing");
        Database database = NotebookFile.open(file());
        try (Notebook notebook = new Notebook(database)) {
            long id = notebook.begin(day.start());
            SampleDays.Day three = day.first(3);
            notebook.keepPull(id, SampleDays.MORNING, three.input(), three.result());
            // SQLite counts pages against a limit of its own exactly as it does against the disk
            database.list("pragma max_page_count = 1", row -> row.wide("max_page_count"));
            SampleDays.Day all = day;
            assertThat(code(() -> notebook.keepPull(id, SampleDays.MORNING, all.input(), all.result())))
                    .isEqualTo(FindingCode.NOTEBOOK_DISK_FULL);
            assertThat(notebook.session(id).pulls()).hasSize(3);
            assertThat(notebook.check().findings()).isEmpty();
        }
        try (Notebook notebook = Notebook.open(file())) {
            long id = notebook.list().get(0).id();
            notebook.keepPull(id, SampleDays.MORNING, day.input(), day.result());
            assertThat(notebook.session(id).pulls())
                    .hasSize(day.result().pulls().size());
        }
    }

    @Test
    void aNotebookThatAnotherProgramHoldsIsSaid() throws IOException, SQLException {
        oneSession();
        try (Connection other = DriverManager.getConnection("jdbc:sqlite:" + file());
                Statement statement = other.createStatement();
                Database database = NotebookFile.open(file());
                Notebook notebook = new Notebook(database)) {
            statement.execute("begin immediate");
            database.list("pragma busy_timeout = 50", row -> row.wide("timeout"));
            assertThat(code(() -> notebook.close(1, SampleDays.MORNING))).isEqualTo(FindingCode.NOTEBOOK_LOCKED);
            assertThat(notebook.list()).as("reading goes on").hasSize(1);
            statement.execute("rollback");
            notebook.close(1, SampleDays.MORNING);
        }
    }

    @Test
    void damagedSamplesAreNamedAndTheOtherSessionsStillRead() throws IOException, SQLException {
        long first = oneSession();
        long second = oneSession();
        sql("update candidate set samples = substr(samples, 1, length(samples) / 2) where session = 1 and number = 4");
        try (Notebook notebook = Notebook.openReadOnly(file())) {
            Finding finding = finding(() -> notebook.session(first));
            assertThat(finding.code()).isEqualTo(FindingCode.NOTEBOOK_SAMPLES_DAMAGED);
            assertThat(finding.text("candidate")).hasValue("4");
            Checkup checkup = notebook.check();
            assertThat(checkup.sessions()).isEqualTo(1);
            assertThat(checkup.findings())
                    .extracting(Finding::code)
                    .containsExactly(FindingCode.NOTEBOOK_SAMPLES_DAMAGED);
            assertThat(notebook.session(second).pulls()).isNotEmpty();
        }
    }

    @Test
    void aFigureThatWasChangedByHandIsNamed() throws IOException, SQLException {
        oneSession();
        sql(
                "update pull set mean_torque_nm = mean_torque_nm + 0.001 where number = 2",
                "update advice set code = 'budget'");
        try (Notebook notebook = Notebook.openReadOnly(file())) {
            List<Finding> findings = notebook.check().findings();
            assertThat(findings).extracting(Finding::code).containsOnly(FindingCode.NOTEBOOK_FIGURE_DIFFERS);
            assertThat(findings)
                    .extracting(finding -> finding.text("name").orElse(""))
                    .containsExactly("mean torque", "advice");
        }
    }

    @Test
    void aWordThatNoVersionWritesIsSaid() throws IOException, SQLException {
        long id = oneSession();
        sql("update pull set knock = knock", "update candidate set kind = 'sideways' where number = 1");
        try (Notebook notebook = Notebook.openReadOnly(file())) {
            assertThat(code(() -> notebook.session(id))).isEqualTo(FindingCode.NOTEBOOK_STRANGE_VALUE);
        }
    }

    /** Bytes overwritten anywhere: it is said, or it does no harm; never a fault of the program. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void bytesOverwrittenAnywhereNeverMakeAFault(long seed) throws IOException {
        long id = oneSession();
        Random random = new Random(seed);
        try (RandomAccessFile raw = new RandomAccessFile(file().toFile(), "rw")) {
            for (int hole = 0; hole < 20; hole++) {
                byte[] noise = new byte[64];
                random.nextBytes(noise);
                raw.seek(seed % 3 == 0 ? random.nextInt(100) : random.nextLong(raw.length() - noise.length));
                raw.write(noise);
            }
        }
        try (Notebook notebook = Notebook.openReadOnly(file())) {
            Checkup checkup = notebook.check();
            assertThat(checkup.findings()).as("seed %d", seed).isNotEmpty();
            notebook.session(id);
        } catch (NotebookException said) {
            assertThat(said.finding().code().name()).startsWith("NOTEBOOK_");
        }
    }
}
