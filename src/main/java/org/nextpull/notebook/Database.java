package org.nextpull.notebook;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;
import org.nextpull.finding.WrittenId;

/** The connection to the file, with the few things that are asked of it. For one thread at a time. */
final class Database implements AutoCloseable {
    private final Path file;
    private final Connection connection;
    private boolean isOpen;

    Database(Path file, Connection connection) {
        this.file = file;
        this.connection = connection;
    }

    /** Makes a value from a row. */
    interface RowReader<T> {
        T read(QueryRow row) throws SQLException, IOException;
    }

    /** Something that is done whole or not at all. */
    interface Work<T> {
        T run() throws IOException;
    }

    Path file() {
        return file;
    }

    /** Runs a statement and gives the number of rows that it changed. */
    int run(String sql, @Nullable Object... arguments) throws NotebookException {
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            bind(statement, arguments);
            return statement.executeUpdate();
        } catch (SQLException fault) {
            throw NotebookException.of(fault, file);
        }
    }

    long insert(String sql, @Nullable Object... arguments) throws NotebookException {
        try (PreparedStatement statement = connection.prepareStatement(sql, Statement.RETURN_GENERATED_KEYS)) {
            bind(statement, arguments);
            statement.executeUpdate();
            try (ResultSet keys = statement.getGeneratedKeys()) {
                return keys.next() ? keys.getLong(1) : 0;
            }
        } catch (SQLException fault) {
            throw NotebookException.of(fault, file);
        }
    }

    /** Runs a statement once for each row of arguments. */
    void runAll(String sql, List<Object[]> rows) throws NotebookException {
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            for (Object[] row : rows) {
                bind(statement, row);
                statement.addBatch();
            }
            statement.executeBatch();
        } catch (SQLException fault) {
            throw NotebookException.of(fault, file);
        }
    }

    /** Runs statements that take no arguments. */
    void script(List<String> statements) throws NotebookException {
        try (Statement statement = connection.createStatement()) {
            for (String sql : statements) {
                statement.execute(sql);
            }
        } catch (SQLException fault) {
            throw NotebookException.of(fault, file);
        }
    }

    <T> List<T> list(String sql, RowReader<T> reader, @Nullable Object... arguments) throws IOException {
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            bind(statement, arguments);
            List<T> list = new ArrayList<>();
            try (ResultSet rows = statement.executeQuery()) {
                QueryRow row = new QueryRow(rows);
                while (rows.next()) {
                    list.add(reader.read(row));
                }
            }
            return list;
        } catch (SQLException fault) {
            throw NotebookException.of(fault, file);
        } catch (IllegalArgumentException strange) {
            throw NotebookException.strange(strange, file);
        }
    }

    <T> Optional<T> first(String sql, RowReader<T> reader, @Nullable Object... arguments) throws IOException {
        return list(sql, reader, arguments).stream().findFirst();
    }

    /**
     * Does something in a transaction: begun as a writer, so that it cannot fail half way for want of the lock. What is done within
     * another one becomes part of that.
     */
    <T> T inTransaction(Work<T> work) throws IOException {
        if (isOpen) {
            return work.run();
        }
        run("begin immediate");
        isOpen = true;
        boolean done = false;
        try {
            T result = work.run();
            run("commit");
            done = true;
            return result;
        } finally {
            isOpen = false;
            if (!done) {
                rollBack();
            }
        }
    }

    /** Does something that only reads, over one state of the notebook whatever others write meanwhile. */
    <T> T inOneView(Work<T> work) throws IOException {
        if (isOpen) {
            return work.run();
        }
        run("begin");
        isOpen = true;
        try {
            return work.run();
        } finally {
            isOpen = false;
            rollBack();
        }
    }

    private void rollBack() {
        try (Statement statement = connection.createStatement()) {
            statement.execute("rollback");
        } catch (SQLException alreadyRolledBack) {
            // a full disk or a broken file ends the transaction by itself, and then there is none left to end
            assert alreadyRolledBack.getErrorCode() >= 0;
        }
    }

    private static void bind(PreparedStatement statement, @Nullable Object... arguments) throws SQLException {
        for (int index = 0; index < arguments.length; index++) {
            statement.setObject(index + 1, plain(arguments[index]));
        }
    }

    private static @Nullable Object plain(@Nullable Object value) {
        if (value instanceof Optional<?> optional) {
            return plain(optional.orElse(null));
        }
        if (value instanceof OptionalDouble optional) {
            return optional.isPresent() ? optional.getAsDouble() : null;
        }
        if (value instanceof OptionalInt optional) {
            return optional.isPresent() ? optional.getAsInt() : null;
        }
        if (value instanceof OptionalLong optional) {
            return optional.isPresent() ? optional.getAsLong() : null;
        }
        if (value instanceof Enum<?> constant) {
            return WrittenId.of(constant.name());
        }
        if (value instanceof Boolean flag) {
            return flag ? 1 : 0;
        }
        return value instanceof Instant instant
                ? instant.truncatedTo(ChronoUnit.MILLIS).toString()
                : value;
    }

    @Override
    public void close() throws NotebookException {
        try {
            connection.close();
        } catch (SQLException fault) {
            throw NotebookException.of(fault, file);
        }
    }
}
