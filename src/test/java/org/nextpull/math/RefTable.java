package org.nextpull.math;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;

/** A reference table of the test resources: comment lines name its source, then a header, then rows. */
public record RefTable(List<String> header, List<List<String>> rows) {
    public static RefTable read(String name) {
        try (InputStream stream = Objects.requireNonNull(RefTable.class.getResourceAsStream("/refdata/" + name), name);
                BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            List<List<String>> lines = reader.lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .map(line -> Arrays.asList(line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1)))
                    .toList();
            return new RefTable(lines.get(0), lines.subList(1, lines.size()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public String text(List<String> row, String column) {
        return row.get(header.indexOf(column)).replace("\"", "");
    }

    public double number(List<String> row, String column) {
        return Double.parseDouble(text(row, column));
    }

    public Series column(String column) {
        return Series.of(rows.stream().mapToDouble(row -> number(row, column)));
    }

    public RefTable where(Predicate<List<String>> keep) {
        return new RefTable(header, rows.stream().filter(keep).toList());
    }

    public RefTable where(String column, String value) {
        return where(row -> text(row, column).equals(value));
    }

    /** The single row in which the first two columns hold these texts. */
    public List<String> row(String first, String second) {
        List<List<String>> found = new ArrayList<>(rows.stream()
                .filter(row -> text(row, header.get(0)).equals(first)
                        && text(row, header.get(1)).equals(second))
                .toList());
        if (found.size() != 1) {
            throw new IllegalArgumentException(first + ", " + second + ": " + found.size() + " rows");
        }
        return found.get(0);
    }

    /** A value of the table of expected statistics. */
    public static double expected(String set, String quantity) {
        RefTable table = read("stats_expected.csv");
        return table.number(table.row(set, quantity), "value");
    }
}
