package org.nextpull.notebook;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.DoubleFunction;
import org.nextpull.finding.WrittenId;

/** A row of a query, read by the names of its columns. */
final class QueryRow {
    private final ResultSet rows;

    QueryRow(ResultSet rows) {
        this.rows = rows;
    }

    String text(String column) throws SQLException {
        return find(column).orElseThrow(() -> new SQLException(column + " is empty"));
    }

    Optional<String> find(String column) throws SQLException {
        return Optional.ofNullable(rows.getString(column));
    }

    /** The constant of that name; {@link IllegalArgumentException} for one that this version does not know. */
    <E extends Enum<E>> E constant(Class<E> type, String column) throws SQLException {
        return named(type, text(column));
    }

    <E extends Enum<E>> Optional<E> findConstant(Class<E> type, String column) throws SQLException {
        return find(column).map(id -> named(type, id));
    }

    static <E extends Enum<E>> E named(Class<E> type, String id) {
        return Arrays.stream(type.getEnumConstants())
                .filter(constant -> WrittenId.of(constant.name()).equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("\"" + id + "\" is no " + type.getSimpleName()));
    }

    int integer(String column) throws SQLException {
        return rows.getInt(column);
    }

    long wide(String column) throws SQLException {
        return rows.getLong(column);
    }

    OptionalInt findInteger(String column) throws SQLException {
        int value = rows.getInt(column);
        return rows.wasNull() ? OptionalInt.empty() : OptionalInt.of(value);
    }

    double real(String column) throws SQLException {
        return rows.getDouble(column);
    }

    OptionalDouble findReal(String column) throws SQLException {
        double value = rows.getDouble(column);
        return rows.wasNull() ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    /** A quantity made from a number, where there is one. */
    <T> Optional<T> find(String column, DoubleFunction<T> made) throws SQLException {
        OptionalDouble value = findReal(column);
        return value.isPresent() ? Optional.of(made.apply(value.getAsDouble())) : Optional.empty();
    }

    Optional<byte[]> findBlob(String column) throws SQLException {
        return Optional.ofNullable(rows.getBytes(column));
    }

    byte[] blob(String column) throws SQLException {
        byte[] bytes = rows.getBytes(column);
        return bytes == null ? new byte[0] : bytes;
    }
}
