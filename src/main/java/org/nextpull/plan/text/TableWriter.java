package org.nextpull.plan.text;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.nextpull.unit.Unit;

/** Writes the lines of one table; a table without lines is not written. */
final class TableWriter {
    private final String header;
    private final StringBuilder lines = new StringBuilder();

    TableWriter(String header) {
        this.header = header;
    }

    void raw(String key, String value) {
        lines.append(key).append(" = ").append(value).append('\n');
    }

    void word(String key, Enum<?> constant) {
        raw(key, Shown.text(Shown.word(constant)));
    }

    void text(String key, Optional<String> text) {
        text.ifPresent(present -> raw(key, Shown.text(present)));
    }

    void texts(String key, List<String> texts) {
        if (!texts.isEmpty()) {
            raw(key, texts.stream().map(Shown::text).collect(Collectors.joining(", ", "[", "]")));
        }
    }

    void number(String key, double number) {
        raw(key, Shown.number(number));
    }

    void number(String key, OptionalDouble number) {
        number.ifPresent(present -> number(key, present));
    }

    /** A quantity held in the project's unit, written in {@code unit}. */
    void quantity(String key, Unit unit, OptionalDouble si) {
        si.ifPresent(present -> raw(key, Shown.number(Decimal.of(unit, present))));
    }

    String written() {
        return lines.isEmpty() ? "" : header + "\n" + lines + "\n";
    }
}
