package org.nextpull;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

/** A row of a table of outside values under {@code refdata}, whose comment lines name the source. */
public record ReferenceRow(Map<String, String> cells) {
    private static final String COMMA_OUTSIDE_QUOTES = ",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)";

    public static List<ReferenceRow> read(String file) {
        try (InputStream stream =
                        Objects.requireNonNull(ReferenceRow.class.getResourceAsStream("/refdata/" + file), file);
                BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            List<List<String>> lines = reader.lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .map(line -> Arrays.asList(line.split(COMMA_OUTSIDE_QUOTES, -1)))
                    .collect(Collectors.toList());
            List<String> header = lines.remove(0);
            return lines.stream().map(line -> of(header, line)).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static ReferenceRow of(List<String> header, List<String> line) {
        Map<String, String> cells = new LinkedHashMap<>();
        for (int i = 0; i < header.size(); i++) {
            cells.put(header.get(i), line.get(i).replace("\"", ""));
        }
        return new ReferenceRow(cells);
    }

    public String text(String column) {
        return Objects.requireNonNull(cells.get(column), column);
    }

    public double number(String column) {
        return Double.parseDouble(text(column));
    }

    /** The first cell names the row in a test report. */
    @Override
    public String toString() {
        return String.join(" ", cells.values().stream().limit(3).toList());
    }
}
