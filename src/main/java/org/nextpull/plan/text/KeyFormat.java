package org.nextpull.plan.text;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.nextpull.channel.Role;
import org.nextpull.channel.SparkMap;
import org.nextpull.plan.StartConditions;
import org.nextpull.plan.text.PlanKey.Range;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Pressure;
import org.nextpull.unit.Temperature;
import org.nextpull.unit.Unit;

/**
 * How the values of a key are written and read.
 *
 * @param kind what a person types for it
 * @param unit the unit that it is written in
 * @param allowed what may stand there, for the handbook
 * @param words what it takes where that is one of a few words; they may follow from other keys
 * @param read reads the key of that name; empty when it is absent or wrong, which the reader then says
 * @param written the value as TOML
 */
record KeyFormat<T>(
        KeyKind kind,
        Optional<Unit> unit,
        String allowed,
        Function<TableReader, List<String>> words,
        BiFunction<TableReader, String, Optional<T>> read,
        Function<T, String> written) {

    private static <T> KeyFormat<T> of(
            KeyKind kind,
            String allowed,
            BiFunction<TableReader, String, Optional<T>> read,
            Function<T, String> written) {
        return new KeyFormat<>(kind, Optional.empty(), allowed, table -> List.of(), read, written);
    }

    static KeyFormat<Double> number(Range range) {
        return of(
                KeyKind.NUMBER,
                range.text(),
                (table, key) -> table.number(key, range).stream().boxed().findFirst(),
                PlanValueText::number);
    }

    /** A number in {@code unit}, as the project's unit of the same quantity. */
    static KeyFormat<Double> number(Unit unit, Range range) {
        return number(range).as(unit, unit::toSi, si -> PlanValueText.shortest(unit, si));
    }

    static KeyFormat<Integer> whole(Range range) {
        return of(
                KeyKind.NUMBER,
                range.text(),
                (table, key) -> table.whole(key, range).stream().boxed().findFirst(),
                String::valueOf);
    }

    static KeyFormat<Temperature> celsius(Range range) {
        return number(range)
                .as(
                        Unit.CELSIUS,
                        Temperature::ofCelsius,
                        found -> PlanValueText.shortest(Unit.CELSIUS, found.kelvins()));
    }

    static KeyFormat<Pressure> kilopascals(Range range) {
        return number(range)
                .as(
                        Unit.KILOPASCAL,
                        Pressure::ofKilopascals,
                        found -> PlanValueText.shortest(Unit.KILOPASCAL, found.pascals()));
    }

    static KeyFormat<Advance> advance() {
        return number(Range.ADVANCE_DEG).as(Unit.DEGREE, Advance::ofDeg, Advance::deg);
    }

    static KeyFormat<Lambda> lambda() {
        return number(Range.LAMBDA).as(Unit.LAMBDA, Lambda::of, Lambda::value);
    }

    static KeyFormat<StartConditions.TemperatureWindow> celsiusWindow(Range range) {
        KeyFormat<Temperature> one = celsius(range);
        KeyFormat<StartConditions.TemperatureWindow> window = of(
                KeyKind.WINDOW,
                "`[low, high]`, " + range.text(),
                (table, key) -> new ListReader(table, key)
                        .window(range)
                        .map(pair -> new StartConditions.TemperatureWindow(
                                Temperature.ofCelsius(pair.get(0)), Temperature.ofCelsius(pair.get(1)))),
                found -> "[" + one.written().apply(found.low()) + ", "
                        + one.written().apply(found.high()) + "]");
        return window.in(Unit.CELSIUS);
    }

    static KeyFormat<String> text() {
        return of(KeyKind.TEXT, "any text", TableReader::text, PlanValueText::text);
    }

    static KeyFormat<List<String>> texts() {
        return of(
                KeyKind.TEXTS,
                "texts",
                (table, key) -> table.has(key) ? Optional.of(new ListReader(table, key).texts()) : Optional.empty(),
                texts -> texts.stream().map(PlanValueText::text).collect(Collectors.joining(", ", "[", "]")));
    }

    /** Speeds in rpm, rising. */
    static KeyFormat<List<Double>> speeds() {
        KeyFormat<List<Double>> speeds = of(
                KeyKind.NUMBERS,
                "rising, " + Range.RPM.text(),
                (table, key) -> new ListReader(table, key).speeds(),
                found -> found.stream().map(PlanValueText::number).collect(Collectors.joining(", ", "[", "]")));
        return speeds.in(Unit.RPM);
    }

    /** Advance at rising speeds. */
    static KeyFormat<SparkMap> cells() {
        return of(
                KeyKind.CELLS,
                "cells of speed and advance, rising: `[[3000, 18.0], [6500, 28.0]]`",
                (table, key) -> new ListReader(table, key)
                        .cells(Range.ADVANCE_DEG)
                        .map(cells -> new SparkMap(cells.stream()
                                .map(cell -> new SparkMap.Cell(cell.get(0), Advance.ofDeg(cell.get(1))))
                                .toList())),
                map -> map.cells().stream()
                        .map(cell -> "[" + PlanValueText.number(cell.rpm()) + ", "
                                + PlanValueText.number(cell.advance().deg()) + "]")
                        .collect(Collectors.joining(", ", "[", "]")));
    }

    static KeyFormat<Boolean> flag() {
        KeyFormat<Boolean> flag = of(KeyKind.FLAG, "`true`, `false`", TableReader::flag, String::valueOf);
        return flag.choosing(table -> List.of("true", "false"));
    }

    static <E extends Enum<E>> KeyFormat<E> word(Class<E> words) {
        return oneOf(List.of(words.getEnumConstants()), PlanValueText::word);
    }

    /** One of some values by the word that a plan writes for each. */
    static <T> KeyFormat<T> oneOf(List<T> values, Function<T, String> word) {
        List<String> words = values.stream().map(word).toList();
        KeyFormat<T> format = of(
                KeyKind.WORD,
                words.stream().map(text -> "`\"" + text + "\"`").collect(Collectors.joining(", ")),
                (table, key) -> table.oneOf(key, words).map(text -> values.get(words.indexOf(text))),
                value -> PlanValueText.text(word.apply(value)));
        return format.choosing(table -> words);
    }

    /** One of some numbers. */
    static <T> KeyFormat<T> oneOfNumbers(List<T> values, Function<T, Double> number) {
        List<Double> numbers = values.stream().map(number).toList();
        Range range = new Range(numbers.get(0), numbers.get(numbers.size() - 1));
        List<String> words = numbers.stream().map(PlanValueText::number).toList();
        KeyFormat<T> format = of(
                KeyKind.NUMBER,
                String.join(", ", words),
                (table, key) -> {
                    OptionalDouble found = table.number(key, range);
                    if (found.isPresent() && !numbers.contains(found.getAsDouble())) {
                        table.unknownWord(table.spot(key), PlanValueText.number(found.getAsDouble()), words);
                        return Optional.empty();
                    }
                    return found.stream()
                            .mapToObj(one -> values.get(numbers.indexOf(one)))
                            .findFirst();
                },
                value -> PlanValueText.number(number.apply(value)));
        return format.choosing(table -> words);
    }

    /** A table of values by the role of a column. */
    static <T> KeyFormat<Map<Role, T>> byRole(RoleReading<T> one, Function<T, String> written) {
        List<String> ids = Arrays.stream(Role.values()).map(Role::id).toList();
        return of(
                KeyKind.IN_TEXT,
                "by role",
                (table, key) -> {
                    TableReader below = table.table(key, () -> ids);
                    Map<Role, T> found = new EnumMap<>(Role.class);
                    for (Role role : Role.values()) {
                        if (below.has(role.id())) {
                            one.read(below, role).ifPresent(value -> found.put(role, value));
                        }
                    }
                    return found.isEmpty() ? Optional.empty() : Optional.of(found);
                },
                values -> inline(new TreeMap<>(values), Role::id, written));
    }

    /** Reads what a table says of a role. */
    interface RoleReading<T> {
        Optional<T> read(TableReader table, Role role);
    }

    /** A table of fractions by name. */
    static KeyFormat<Map<String, Double>> fractions() {
        return of(
                KeyKind.IN_TEXT,
                "fractions of 0 to 1, together 1",
                (table, key) -> {
                    TableReader parts = table.table(key, () -> List.copyOf(table.keysBelow(key)));
                    Map<String, Double> found = new TreeMap<>();
                    for (String part : parts.keys()) {
                        parts.number(part, Range.FRACTION).ifPresent(fraction -> found.put(part, fraction));
                    }
                    boolean readable =
                            parts.isPresent() && found.size() == parts.keys().size();
                    return readable ? Optional.of(found) : Optional.empty();
                },
                values -> inline(new TreeMap<>(values), PlanValueText::key, PlanValueText::number));
    }

    private static <K, T> String inline(TreeMap<K, T> values, Function<K, String> key, Function<T, String> written) {
        return values.entrySet().stream()
                .map(one -> key.apply(one.getKey()) + " = " + written.apply(one.getValue()))
                .collect(Collectors.joining(", ", "{ ", " }"));
    }

    /** The same as another type: {@code to} must undo {@code back}. */
    <U> KeyFormat<U> as(Function<T, U> to, Function<U, T> back) {
        return new KeyFormat<>(
                kind,
                unit,
                allowed,
                words,
                (table, key) -> read.apply(table, key).map(to),
                value -> written.apply(back.apply(value)));
    }

    private <U> KeyFormat<U> as(Unit newUnit, Function<T, U> to, Function<U, T> back) {
        return as(to, back).in(newUnit);
    }

    KeyFormat<T> in(Unit newUnit) {
        return new KeyFormat<>(kind, Optional.of(newUnit), allowed, words, read, written);
    }

    KeyFormat<T> allowing(String newAllowed) {
        return new KeyFormat<>(kind, unit, newAllowed, words, read, written);
    }

    KeyFormat<T> choosing(Function<TableReader, List<String>> newWords) {
        return new KeyFormat<>(kind, unit, allowed, newWords, read, written);
    }
}
