package org.nextpull.report.html;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A table.
 *
 * @param caption what it shows
 * @param headings one a column
 * @param rows its rows
 */
record Grid(String caption, List<Cell> headings, List<Line> rows) {
    private static final int MOST_KEPT_TOGETHER = 20;

    Grid {
        headings = List.copyOf(headings);
        rows = List.copyOf(rows);
    }

    /**
     * A cell.
     *
     * @param text its text
     * @param side {@code n} for numbers, which stand to the right, {@code w} for words
     */
    record Cell(String text, String side) {}

    /** A row. */
    record Line(List<Cell> cells) {}

    /** The headings, each on the side of what stands below it. */
    List<Cell> heads() {
        return IntStream.range(0, headings.size())
                .mapToObj(column -> new Cell(headings.get(column).text(), side(column)))
                .toList();
    }

    private String side(int column) {
        return rows.stream()
                        .map(row -> row.cells().get(column))
                        .allMatch(cell -> cell.text().isEmpty() || cell.side().equals("n"))
                ? "n"
                : "w";
    }

    /** Whether it may break over pages, where its headings come again. */
    boolean isLong() {
        return rows.size() > MOST_KEPT_TOGETHER;
    }

    static Grid of(String caption, String... headings) {
        return new Grid(caption, cells(headings), List.of());
    }

    /** With one more row. */
    Grid row(String... cells) {
        if (cells.length != headings.size()) {
            throw new IllegalArgumentException(cells.length + " cells under " + headings.size() + " headings");
        }
        List<Line> more = new ArrayList<>(rows);
        more.add(new Line(cells(cells)));
        return new Grid(caption, headings, more);
    }

    boolean isEmpty() {
        return rows.isEmpty();
    }

    private static List<Cell> cells(String... texts) {
        return Stream.of(texts)
                .map(text -> new Cell(text, text.matches("[-+]?[0-9.]+( %)?( \u00b1 [0-9.]+)?|-") ? "n" : "w"))
                .toList();
    }
}
