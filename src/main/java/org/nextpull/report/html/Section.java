package org.nextpull.report.html;

import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.nextpull.chart.ChartLook;
import org.nextpull.chart.ChartSize;
import org.nextpull.chart.Charts;
import org.nextpull.chart.Plot;

/**
 * A part of the sheet, in the order in which the template shows what it has. All text is plain; the template escapes it.
 *
 * @param title its heading
 * @param paragraphs sentences
 * @param facts names and values
 * @param figures charts, each with its table of numbers
 * @param grids tables
 * @param items a list
 * @param verbatim text to be kept line by line
 */
record Section(
        String title,
        List<String> paragraphs,
        List<Fact> facts,
        List<Figure> figures,
        List<Grid> grids,
        List<String> items,
        List<String> verbatim) {
    private static final int MANY_ITEMS = 6;
    private static final int SHORT_ITEM = 200;

    /** A name and its value. */
    record Fact(String name, String value) {}

    /**
     * A chart.
     *
     * @param title its caption
     * @param source the picture as a data URI
     * @param alt what it shows, in words
     * @param width width in CSS pixels
     * @param height height in CSS pixels
     * @param numbers its numbers
     * @param arePrinted whether they stand in print as well, as no other table has them
     */
    record Figure(String title, String source, String alt, int width, int height, Grid numbers, boolean arePrinted) {
        /** Of charts of which two stand side by side. */
        static final ChartSize HALF = new ChartSize(430, 335, 2);

        /** A plot, drawn for paper. */
        static Figure of(String title, Plot plot, ChartSize size, String alt, Grid numbers) {
            byte[] png = new Charts(size, ChartLook.light()).draw(plot);
            return new Figure(
                    title,
                    "data:image/png;base64," + Base64.getEncoder().encodeToString(png),
                    alt,
                    size.width(),
                    size.height(),
                    numbers,
                    false);
        }

        Figure withNumbersInPrint() {
            return new Figure(title, source, alt, width, height, numbers, true);
        }

        boolean isHalf() {
            return width <= HALF.width();
        }
    }

    static Section of(String title) {
        return new Section(title, List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
    }

    Section withParagraphs(List<String> more) {
        return new Section(title, List.copyOf(more), facts, figures, grids, items, verbatim);
    }

    Section withFacts(List<Fact> more) {
        return new Section(title, paragraphs, List.copyOf(more), figures, grids, items, verbatim);
    }

    Section withFigures(List<Figure> more) {
        return new Section(title, paragraphs, facts, List.copyOf(more), grids, items, verbatim);
    }

    Section withGrids(List<Grid> more) {
        return new Section(title, paragraphs, facts, figures, List.copyOf(more), items, verbatim);
    }

    Section withItems(List<String> more) {
        return new Section(title, paragraphs, facts, figures, grids, List.copyOf(more), verbatim);
    }

    Section withVerbatim(String text) {
        return new Section(title, paragraphs, facts, figures, grids, items, List.of(text));
    }

    boolean hasFacts() {
        return !facts.isEmpty();
    }

    boolean hasItems() {
        return !items.isEmpty();
    }

    /** Whether its items are many and short, so that they stand in two columns. */
    boolean isDense() {
        return items.size() > MANY_ITEMS && items.stream().allMatch(item -> item.length() < SHORT_ITEM);
    }

    boolean isEmpty() {
        return paragraphs.isEmpty()
                && facts.isEmpty()
                && figures.isEmpty()
                && grids.isEmpty()
                && items.isEmpty()
                && verbatim.isEmpty();
    }

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

        /** The rows, each cell on the side of its column, so that a dash stands below its words. */
        List<Line> lines() {
            List<Cell> heads = heads();
            return rows.stream()
                    .map(row -> new Line(IntStream.range(0, heads.size())
                            .mapToObj(column -> new Cell(
                                    row.cells().get(column).text(),
                                    heads.get(column).side()))
                            .toList()))
                    .toList();
        }

        private String side(int column) {
            return rows.stream()
                            .map(row -> row.cells().get(column))
                            .allMatch(
                                    cell -> cell.text().isEmpty() || cell.side().equals("n"))
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
}
