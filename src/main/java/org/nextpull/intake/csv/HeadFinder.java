package org.nextpull.intake.csv;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.nextpull.channel.LogHints;
import org.nextpull.intake.ColumnReader;
import org.nextpull.intake.NumberReader;
import org.nextpull.intake.NumberStyle;
import org.nextpull.intake.TimeText;

/** Finds the separator, the header behind any preamble, a row of units and the decimal mark in the first part of a text. */
final class HeadFinder {
    /** Characters that are looked at to find separator and header. */
    private static final int CHARS_FOR_FORM = 1 << 15;
    /** Lines that are looked at however long they are: a header of a thousand names is longer than the rows below it. */
    private static final int LINES_FOR_FORM = 3;
    /** Rows within which a header must stand. */
    private static final int ROWS_FOR_HEADER = 1000;
    /** Share of rows that makes a number of fields a usual one. */
    private static final double USUAL_SHARE = 0.05;

    private static final double DATA_SHARE = 0.3;
    /** How much more rows of numbers say about the separator than names do. */
    private static final double DATA_OVER_NAMES = 100;
    /** The best score of a separator that parts nothing: one name in a row. */
    private static final double MOST_UNPARTED = 1;

    private final ColumnReader columns;
    private final LogHints hints;
    private final NumberReader points = new NumberReader(NumberStyle.point());
    private final NumberReader commas = new NumberReader(NumberStyle.comma());

    HeadFinder(ColumnReader columns, LogHints hints) {
        this.columns = columns;
        this.hints = hints;
    }

    /**
     * Looks at the first part of a text.
     *
     * @param text whole lines
     * @param complete whether it is the whole text
     * @return the head, or empty where no line can be a header
     */
    Optional<Head> find(String text, boolean complete) {
        String first = wholeLines(text, CHARS_FOR_FORM);
        String part = first.lines().limit(LINES_FOR_FORM).count() < LINES_FOR_FORM ? text : first;
        Separator separator = separator(part);
        List<TextRow> rows = CsvText.rows(text, separator);
        int headerIndex = headerIndex(rows);
        if (headerIndex < 0) {
            return Optional.empty();
        }
        TextRow header = rows.get(headerIndex);
        int below = headerIndex + 1;
        TextRow units = new TextRow(0, List.of());
        if (below < rows.size() && isUnits(rows.get(below))) {
            units = rows.get(below++);
        } else if (headerIndex > 0 && isUnits(rows.get(headerIndex - 1))) {
            units = rows.get(headerIndex - 1);
        }
        List<TextRow> data = rows.subList(below, rows.size()).stream()
                .filter(row -> !row.isComment() && !row.fields().equals(header.fields()))
                .toList();
        NumberMarks marks = NumberMarks.of(data);
        TextRow wholeHeader = separator == Separator.BLANKS ? rejoined(text, header, usualFields(data)) : header;
        return Optional.of(new Head(
                separator,
                marks.style(),
                marks.isDoubtful(),
                wholeHeader,
                units,
                Math.max(header.line(), units.line()) + lineBreaks(header),
                data,
                leastFields(data),
                complete));
    }

    /** The separator that parts the rows best; the likelier one where two do equally well. */
    private Separator separator(String part) {
        Separator best = Separator.COMMA;
        double most = 0;
        List<Separator> occurringFirst = Arrays.stream(Separator.values())
                .sorted(Comparator.comparing(candidate -> !part.contains(candidate.shown())))
                .toList();
        for (Separator candidate : occurringFirst) {
            if (most > MOST_UNPARTED && !part.contains(candidate.shown())) {
                break;
            }
            double stray = DATA_OVER_NAMES * CsvText.strayQuotes(part, candidate);
            double score = score(CsvText.rows(part, candidate), most + stray) - stray;
            if (score > most) {
                best = candidate;
                most = score;
            }
        }
        return best;
    }

    /** A quoted header may span lines. */
    private static long lineBreaks(TextRow header) {
        return header.fields().stream()
                .flatMapToInt(String::chars)
                .filter(c -> c == '\n')
                .count();
    }

    private static String wholeLines(String text, int most) {
        if (text.length() <= most) {
            return text;
        }
        int end = Math.max(text.lastIndexOf('\n', most), text.lastIndexOf('\r', most));
        return text.substring(0, end > 0 ? end + 1 : most);
    }

    /**
     * How well a separator parts rows into numbers: the sum, over rows of the usual width, of the share of numbers in them.
     *
     * @param enough a score up to which it does not matter what it is: names are not looked for where they cannot lift it above that
     */
    private double score(List<TextRow> rows, double enough) {
        boolean[] areData = areData(rows);
        int usual = usualFields(only(rows, areData));
        double sum = 0;
        int widest = 0;
        for (int index = 0; index < areData.length; index++) {
            TextRow row = rows.get(index);
            sum += areData[index] && row.fields().size() == usual ? numberShare(row) : 0;
            widest = Math.max(widest, row.fields().size());
        }
        double most = usual == 0 ? widest : DATA_OVER_NAMES * (sum + 1);
        if (most <= enough) {
            return most;
        }
        int header = 0;
        for (int index = 0; index < Math.min(areData.length, ROWS_FOR_HEADER); index++) {
            header = areData[index]
                    ? header
                    : Math.max(header, columns.knownNames(rows.get(index).fields()));
        }
        return usual == 0 ? header : DATA_OVER_NAMES * (sum + Math.min(1, (double) header / usual));
    }

    private boolean[] areData(List<TextRow> rows) {
        boolean[] areData = new boolean[rows.size()];
        for (int index = 0; index < areData.length; index++) {
            areData[index] = isData(rows.get(index));
        }
        return areData;
    }

    private static List<TextRow> only(List<TextRow> rows, boolean[] wanted) {
        return IntStream.range(0, wanted.length)
                .filter(index -> wanted[index])
                .mapToObj(rows::get)
                .toList();
    }

    private boolean isData(TextRow row) {
        return row.filled() >= 2 && !row.isComment() && numberShare(row) >= DATA_SHARE;
    }

    private double numberShare(TextRow row) {
        int filled = 0;
        int numbers = 0;
        for (String cell : row.fields()) {
            filled += cell.isBlank() ? 0 : 1;
            numbers += isNumber(cell) ? 1 : 0;
        }
        return filled == 0 ? 0 : (double) numbers / filled;
    }

    private boolean isNumber(String cell) {
        return !cell.isBlank()
                && (points.read(cell) == NumberReader.Kind.NUMBER
                        || commas.read(cell) == NumberReader.Kind.NUMBER
                        || (cell.indexOf(':') > 0 && TimeText.seconds(cell).isPresent()));
    }

    private int headerIndex(List<TextRow> rows) {
        List<TextRow> first = rows.subList(0, Math.min(rows.size(), ROWS_FOR_HEADER));
        boolean[] areData = areData(first);
        int usual = usualFields(only(first, areData));
        int best = -1;
        int bestScore = 0;
        for (int index = 0; index < areData.length; index++) {
            TextRow row = rows.get(index);
            if (areData[index] && columns.knownNames(row.fields()) < 2) {
                continue;
            }
            int named = named(row);
            boolean isBeforeData = isBeforeData(rows, index);
            int score = 10 * named
                    + (isBeforeData ? 5 : 0)
                    + (row.fields().size() == usual || row.filled() == usual ? 3 : 0);
            if (score > bestScore && (named > 0 || isBeforeData)) {
                best = index;
                bestScore = score;
            }
        }
        return best;
    }

    private int named(TextRow row) {
        long wanted = row.fields().stream()
                .filter(field -> hints.headers().values().stream()
                        .anyMatch(header -> header.strip().equalsIgnoreCase(field.strip())))
                .count();
        return columns.knownNames(row.fields()) + 2 * (int) wanted;
    }

    private boolean isBeforeData(List<TextRow> rows, int index) {
        if (index + 1 >= rows.size() || rows.get(index).filled() < 2) {
            return false;
        }
        return isData(rows.get(index + 1))
                || (index + 2 < rows.size() && isUnits(rows.get(index + 1)) && isData(rows.get(index + 2)));
    }

    private boolean isUnits(TextRow row) {
        List<String> filled = row.fields().stream()
                .filter(cell -> !cell.isBlank())
                .limit(ColumnReader.MOST_LOOKED_AT)
                .toList();
        long units = filled.stream().filter(this::isUnitCell).count();
        return !filled.isEmpty()
                && units * 2 >= filled.size()
                && numberShare(row) < DATA_SHARE
                && columns.knownNames(row.fields()) <= units;
    }

    private boolean isUnitCell(String cell) {
        return columns.isUnit(cell) || cell.strip().matches("-+|[hms]+:[hms:.,]+|\\[.*]|\\(.*\\)");
    }

    private static int usualFields(List<TextRow> rows) {
        TreeMap<Integer, Integer> counts = new TreeMap<>();
        rows.forEach(row -> counts.merge(row.fields().size(), 1, Integer::sum));
        return counts.entrySet().stream()
                .max(java.util.Map.Entry.comparingByValue())
                .map(java.util.Map.Entry::getKey)
                .orElse(0);
    }

    private static int leastFields(List<TextRow> rows) {
        TreeMap<Integer, Integer> counts = new TreeMap<>();
        rows.forEach(row -> counts.merge(row.fields().size(), 1, Integer::sum));
        return counts.entrySet().stream()
                .filter(entry -> entry.getValue() >= Math.max(1, USUAL_SHARE * rows.size())
                        && entry.getValue() * 3 >= counts.getOrDefault(usualFields(rows), 0))
                .map(java.util.Map.Entry::getKey)
                .findFirst()
                .orElse(0);
    }

    /** A header whose names hold blanks, over columns parted by blanks: parted at wide gaps, else so that most names are known. */
    private TextRow rejoined(String text, TextRow header, int wanted) {
        if (header.fields().size() <= wanted || wanted == 0) {
            return header;
        }
        String line =
                text.lines().skip(header.line() - 1).findFirst().orElse("").strip();
        List<String> wide = Arrays.asList(line.split("\\s{2,}|\\t", -1));
        return new TextRow(
                header.line(),
                wide.size() == wanted ? wide : NameGroups.join(header.fields(), wanted, columns::knownNames));
    }
}
