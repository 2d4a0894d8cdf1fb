package org.nextpull.notebook;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.nextpull.finding.Detail;
import org.nextpull.finding.FindingCode;

/**
 * The tables of the file, as numbered steps. A file says in {@code user_version} how many steps it has taken; steps are only ever added.
 * {@code application_id} tells a notebook from any other database.
 */
final class Schema {
    /** The letters npul. */
    static final int APPLICATION = 0x6e70756c;

    private static final List<String> STEPS =
            List.of("001-sessions.sql", "002-lessons.sql", "003-knock.sql", "004-maps.sql", "005-knowledge.sql");

    private Schema() {}

    static int newest() {
        return STEPS.size();
    }

    /** Version of the file; 0 for an empty one. */
    static int version(Database database) throws IOException {
        return pragma(database, "user_version");
    }

    /** Refuses a file that is no notebook, or that a newer program has written. */
    static void check(Database database) throws IOException {
        int application = pragma(database, "application_id");
        boolean isEmpty = database.list("select name from sqlite_schema limit 1", row -> row.text("name"))
                .isEmpty();
        if (application != APPLICATION && !isEmpty) {
            throw NotebookException.because(FindingCode.NOTEBOOK_OF_ANOTHER, database.file());
        }
        int version = version(database);
        if (version > newest()) {
            throw NotebookException.because(
                    FindingCode.NOTEBOOK_NEWER,
                    database.file(),
                    Detail.of("version", version),
                    Detail.of("known", newest()));
        }
    }

    /** Takes the steps that are missing, all or none. */
    static void migrate(Database database) throws IOException {
        if (version(database) == newest()) {
            return;
        }
        database.inTransaction(() -> {
            // another process may have taken the steps while this one waited for the lock
            for (int step = version(database); step < newest(); step++) {
                database.script(statements(STEPS.get(step)));
                database.script(List.of("pragma user_version = " + (step + 1)));
            }
            database.script(List.of("pragma application_id = " + APPLICATION));
            return database;
        });
    }

    private static int pragma(Database database, String name) throws IOException {
        return database.first("pragma " + name, row -> row.integer(name)).orElse(0);
    }

    /** Statements of a step: text up to a semicolon at the end of a line; remarks are lines of their own. */
    private static List<String> statements(String resource) throws IOException {
        try (InputStream in = Objects.requireNonNull(Schema.class.getResourceAsStream(resource), resource)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            String plain =
                    text.lines().filter(line -> !line.startsWith("--")).reduce("", (all, line) -> all + line + "\n");
            return Arrays.stream(plain.split(";\n"))
                    .map(String::strip)
                    .filter(statement -> !statement.isEmpty())
                    .toList();
        }
    }
}
