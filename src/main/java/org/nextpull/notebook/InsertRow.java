package org.nextpull.notebook;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.nextpull.finding.WrittenId;

/** A row to be written, column by column. Absent values become null. */
final class InsertRow {
    private final String table;
    private final List<String> columns = new ArrayList<>();
    private final List<@Nullable Object> values = new ArrayList<>();

    private InsertRow(String table) {
        this.table = table;
    }

    static InsertRow into(String table) {
        return new InsertRow(table);
    }

    /**
     * A text, number, instant, byte array, constant, or an optional of one. A constant stands in the file as its {@link WrittenId}, so that
     * giving it another name is a migration that a test notices.
     */
    InsertRow put(String column, Object value) {
        columns.add(column);
        values.add(value);
        return this;
    }

    /** Writes it and gives its row number. */
    long insert(Database database) throws NotebookException {
        return write("insert", database);
    }

    /** Writes it in place of one with its key. */
    void replace(Database database) throws NotebookException {
        write("insert or replace", database);
    }

    /** Writes it over the one with that key, which stays the same row for those that belong to it. */
    void upsert(Database database, String key) throws NotebookException {
        String changes =
                columns.stream().map(column -> column + " = excluded." + column).collect(Collectors.joining(", "));
        database.insert(sql("insert") + " on conflict (" + key + ") do update set " + changes, values.toArray());
    }

    private long write(String verb, Database database) throws NotebookException {
        return database.insert(sql(verb), values.toArray());
    }

    private String sql(String verb) {
        String marks = String.join(", ", Collections.nCopies(columns.size(), "?"));
        return verb + " into " + table + " (" + String.join(", ", columns) + ") values (" + marks + ")";
    }
}
