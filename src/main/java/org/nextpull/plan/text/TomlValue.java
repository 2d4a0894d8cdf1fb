package org.nextpull.plan.text;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.tomlj.TomlArray;
import org.tomlj.TomlTable;

/** Writes any value of TOML 1.0 on one line. */
final class TomlValue {
    /** Beyond this a number without a point may be too long for an integer of TOML. */
    private static final double LARGEST_PLAIN = 1e15;

    private TomlValue() {}

    static String written(Object value) {
        if (value instanceof String text) {
            return PlanValueText.text(text);
        }
        if (value instanceof Double number) {
            return number(number);
        }
        if (value instanceof TomlArray array) {
            return IntStream.range(0, array.size())
                    .mapToObj(index -> written(array.get(index)))
                    .collect(Collectors.joining(", ", "[", "]"));
        }
        if (value instanceof TomlTable table) {
            return table.isEmpty()
                    ? "{}"
                    : table.entrySet().stream()
                            .map(entry -> PlanValueText.key(entry.getKey()) + " = " + written(entry.getValue()))
                            .collect(Collectors.joining(", ", "{ ", " }"));
        }
        return moment(value);
    }

    private static String number(double number) {
        if (!Double.isFinite(number)) {
            return PlanValueText.value(number);
        }
        return Math.abs(number) < LARGEST_PLAIN ? PlanValueText.number(number) : Double.toString(number);
    }

    /** Times without seconds are none of TOML's. */
    private static String moment(Object value) {
        if (value instanceof OffsetDateTime time) {
            return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(time);
        }
        if (value instanceof LocalDateTime time) {
            return DateTimeFormatter.ISO_LOCAL_DATE_TIME.format(time);
        }
        return value instanceof LocalTime time ? DateTimeFormatter.ISO_LOCAL_TIME.format(time) : value.toString();
    }

    /** What a person reads and types for a value: a text without its quotes, two numbers as a range, cells as {@code 3500: 18}, a list with commas. */
    static String typed(Object value) {
        if (value instanceof String text) {
            return text;
        }
        if (value instanceof TomlArray array && isWindow(array)) {
            return typed(array.get(0)) + " to " + typed(array.get(1));
        }
        if (value instanceof TomlArray array
                && !array.isEmpty()
                && IntStream.range(0, array.size())
                        .allMatch(index -> array.get(index) instanceof TomlArray cell && isWindow(cell))) {
            return IntStream.range(0, array.size())
                    .mapToObj(array::getArray)
                    .map(cell -> typed(cell.get(0)) + ": " + typed(cell.get(1)))
                    .collect(Collectors.joining(", "));
        }
        if (value instanceof TomlArray array) {
            String between = IntStream.range(0, array.size())
                            .mapToObj(array::get)
                            .anyMatch(one -> typed(one).contains(","))
                    ? "; "
                    : ", ";
            return IntStream.range(0, array.size())
                    .mapToObj(index -> typed(array.get(index)))
                    .collect(Collectors.joining(between));
        }
        return written(value);
    }

    private static boolean isWindow(TomlArray array) {
        return array.size() == 2 && array.get(0) instanceof Number && array.get(1) instanceof Number;
    }

    /** A number as a person types it, as TOML; a text in quotes when it is none, which reading then names as wrong. */
    static String ofNumber(String typed) {
        String plain = typed.strip();
        if (!plain.matches("[+-]?(\\d{1,15}(\\.\\d{0,20})?|\\.\\d{1,20})")) {
            return PlanValueText.text(plain);
        }
        BigDecimal exact = new BigDecimal(plain).stripTrailingZeros();
        return exact.signum() == 0 ? "0" : exact.toPlainString();
    }
}
