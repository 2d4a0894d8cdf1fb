package org.nextpull.report.text;

import java.util.ArrayList;
import java.util.List;

/** A table in plain text: numbers to the right, words to the left, two blanks between. */
final class TextTable {
    private final List<List<String>> rows = new ArrayList<>();

    TextTable(String... headings) {
        rows.add(List.of(headings));
    }

    TextTable row(String... cells) {
        rows.add(List.of(cells));
        return this;
    }

    boolean isEmpty() {
        return rows.size() == 1;
    }

    String text() {
        int columns = rows.get(0).size();
        int[] widths = new int[columns];
        boolean[] words = new boolean[columns];
        for (List<String> row : rows) {
            for (int column = 0; column < columns; column++) {
                String cell = row.get(column);
                widths[column] = Math.max(widths[column], cell.length());
                words[column] |= row != rows.get(0) && !cell.isEmpty() && !cell.matches("[-+]?[0-9.]+( %)?|-");
            }
        }
        StringBuilder text = new StringBuilder();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int column = 0; column < columns; column++) {
                String blanks = " ".repeat(widths[column] - row.get(column).length());
                line.append(column == 0 ? "" : "  ");
                line.append(words[column] ? row.get(column) + blanks : blanks + row.get(column));
            }
            text.append(line.toString().stripTrailing()).append('\n');
        }
        return text.toString();
    }
}
