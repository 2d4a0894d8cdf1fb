package org.nextpull.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Objects;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.nextpull.finding.FindingCode;
import org.nextpull.session.OperatorAction;

/** Notebooks of every older version of the tables, as they were written then, in {@code src/test/resources/notebook}. */
class MigrationTest {
    /** The script of a version beyond these says what it adds to the one before. */
    private static final int WHOLE_VERSIONS = 2;

    @TempDir
    private Path folder;

    static IntStream olderVersions() {
        return IntStream.range(1, Schema.newest());
    }

    private Path restored(int version) throws IOException, SQLException {
        Path file = folder.resolve("version-" + version + ".db");
        if (version > WHOLE_VERSIONS) {
            Files.move(restored(version - 1), file);
        }
        String name = "/notebook/schema-" + version + ".sql";
        try (InputStream in = Objects.requireNonNull(MigrationTest.class.getResourceAsStream(name), name);
                Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            statement.executeUpdate(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        }
        return file;
    }

    @ParameterizedTest
    @MethodSource("olderVersions")
    void aNotebookOfEachOlderVersionIsBroughtUpAndLosesNothing(int version) throws IOException, SQLException {
        Path file = restored(version);
        NotebookException refused = catchThrowableOfType(NotebookException.class, () -> Notebook.openReadOnly(file));
        assertThat(refused.finding().code()).isEqualTo(FindingCode.NOTEBOOK_OLDER);
        try (Notebook notebook = Notebook.open(file)) {
            KeptSession kept = notebook.session(1);
            assertThat(kept.pulls()).hasSize(2);
            assertThat(((OperatorAction.Note) kept.acts().get(0).act()).text())
                    .isEqualTo("tables of version " + version);
            assertThat(notebook.check().findings()).isEmpty();
        }
        try (Notebook notebook = Notebook.openReadOnly(file)) {
            assertThat(notebook.list()).hasSize(1);
        }
    }

    @Test
    void aNewNotebookAndOneBroughtUpHaveTheSameTables() throws IOException, SQLException {
        Path old = restored(1);
        Path fresh = folder.resolve("fresh.db");
        Notebook.open(old).close();
        Notebook.open(fresh).close();
        assertThat(tables(old)).isEqualTo(tables(fresh));
    }

    @Test
    void aStepThatFailsLeavesTheOldTables() throws IOException, SQLException {
        Path file = restored(1);
        // the second step makes this table, and so cannot be taken
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            statement.executeUpdate("create table lesson (x integer)");
        }
        NotebookException refused = catchThrowableOfType(NotebookException.class, () -> Notebook.open(file));
        assertThat(refused.finding().code()).isEqualTo(FindingCode.NOTEBOOK_FAILED);
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            statement.executeUpdate("drop table lesson");
        }
        try (Notebook notebook = Notebook.open(file)) {
            assertThat(notebook.session(1).pulls()).hasSize(2);
        }
    }

    private static String tables(Path file) throws SQLException {
        StringBuilder text = new StringBuilder();
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement();
                var rows = statement.executeQuery(
                        "select m.name, p.name, p.type, p.\"notnull\", p.pk from sqlite_schema m,"
                                + " pragma_table_info(m.name) p where m.type = 'table' order by m.name, p.cid")) {
            while (rows.next()) {
                for (int column = 1; column <= 5; column++) {
                    text.append(rows.getString(column)).append(' ');
                }
                text.append('\n');
            }
        }
        return text.toString();
    }
}
