package org.nextpull.intake.wire;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.nextpull.intake.NumberStyle;
import org.nextpull.intake.ProbeColumn;

/** The first lines of a make-up, held back until its columns are understood from them: {@link #PROBE_LINES}, or {@link #PROBE_S}. */
final class HeldLines {
    static final int PROBE_LINES = 30;
    static final double PROBE_S = 1;

    private static final Pattern DECIMAL_COMMA = Pattern.compile("[+-]?\\d+,\\d+");
    private static final Pattern DECIMAL_POINT = Pattern.compile("[+-]?\\d*\\.\\d+");

    private final List<Held> lines = new ArrayList<>();

    /**
     * One line.
     *
     * @param number of the line in its source
     * @param arrivedS time of its arrival
     * @param cells in the order of the headers
     */
    record Held(long number, double arrivedS, List<String> cells) {
        String cell(int place) {
            return place < cells.size() ? cells.get(place) : "";
        }
    }

    List<Held> lines() {
        return List.copyOf(lines);
    }

    boolean isEmpty() {
        return lines.isEmpty();
    }

    void clear() {
        lines.clear();
    }

    /** Holds a line whose values belong to these columns. */
    void add(long number, double arrivedS, LineFields values, int[] places, int columns) {
        String[] cells = new String[columns];
        Arrays.fill(cells, "");
        for (int field = 0; field < values.count(); field++) {
            if (places[field] < cells.length) {
                cells[places[field]] = values.field(field);
            }
        }
        lines.add(new Held(number, arrivedS, List.of(cells)));
    }

    void removeLast() {
        lines.remove(lines.size() - 1);
    }

    /** Whether enough lines are held to understand the columns. */
    boolean isEnough(double nowS) {
        return lines.size() >= PROBE_LINES || nowS - lines.get(0).arrivedS() >= PROBE_S;
    }

    /** Whether numbers are written with a comma or with a point. */
    NumberStyle style() {
        boolean comma = false;
        for (Held held : lines) {
            for (String cell : held.cells()) {
                comma |= DECIMAL_COMMA.matcher(cell).matches();
                if (DECIMAL_POINT.matcher(cell).matches()) {
                    return NumberStyle.point();
                }
            }
        }
        return comma ? NumberStyle.comma() : NumberStyle.point();
    }

    /** What each column holds so far. */
    List<ProbeColumn> probes(int columns, NumberStyle style) {
        return IntStream.range(0, columns)
                .mapToObj(place -> ProbeColumn.of(
                        lines.stream().map(held -> held.cell(place)).toList(), style))
                .toList();
    }
}
