package org.nextpull.plan.text;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.nextpull.finding.Detail;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.NearestNames;
import org.tomlj.Toml;
import org.tomlj.TomlArray;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/**
 * Reads one table of a plan. Every key that is asked for is remembered, so that {@link #finish} can name those that nobody asked for:
 * nothing in a plan is silently left out.
 */
final class TableReader {
    private static final int LONGEST_WORD = 64;

    private final String path;
    private final TomlTable table;
    private final Optional<TomlPosition> position;
    private final Problems problems;
    private final List<TableReader> all;
    private final Set<String> asked = new LinkedHashSet<>();

    private TableReader(Spot spot, TomlTable table, Problems problems, List<TableReader> all) {
        this.path = spot.key();
        this.position = spot.position();
        this.table = table;
        this.problems = problems;
        this.all = all;
        all.add(this);
    }

    /** The top of a plan. */
    static TableReader top(TomlTable table, Problems problems) {
        return new TableReader(new Spot("", Optional.empty(), ""), table, problems, new ArrayList<>());
    }

    Problems problems() {
        return problems;
    }

    /** Whether the plan has this table. */
    boolean isPresent() {
        return position.isPresent();
    }

    boolean has(String key) {
        return table.keySet().contains(key);
    }

    Set<String> keys() {
        return table.keySet();
    }

    Spot spot() {
        return new Spot(path, position, "");
    }

    Spot spot(String key) {
        return spot(key, "");
    }

    /** Where a key stands; a key that is not written shows {@code fallback} and the place of its table. */
    Spot spot(String key, String fallback) {
        Optional<TomlPosition> own = Optional.ofNullable(table.inputPositionOf(List.of(key)));
        String shown = find(key).map(Shown::value).orElse(fallback);
        return new Spot(dotted(key), own.or(() -> position), shown);
    }

    OptionalDouble number(String key, Range range) {
        Optional<Object> value = ask(key);
        if (value.isEmpty()) {
            return OptionalDouble.empty();
        }
        return new NumberCheck(problems, range).number(spot(key), value.get());
    }

    double number(String key, Range range, double fallback) {
        return number(key, range).orElse(fallback);
    }

    OptionalDouble neededNumber(String key, Range range) {
        need(key);
        return number(key, range);
    }

    OptionalInt whole(String key, Range range) {
        Optional<Object> value = ask(key);
        if (value.isEmpty()) {
            return OptionalInt.empty();
        }
        return new NumberCheck(problems, range).whole(spot(key), value.get());
    }

    int whole(String key, Range range, int fallback) {
        return whole(key, range).orElse(fallback);
    }

    /** A list of two numbers; empty when absent or wrong. */
    Optional<List<Double>> pair(String key, Range range) {
        Optional<Object> value = ask(key);
        if (value.isEmpty()) {
            return Optional.empty();
        }
        if (!(value.get() instanceof TomlArray array) || array.size() != 2) {
            wrongType(spot(key), "a list of two numbers, [low, high]");
            return Optional.empty();
        }
        NumberCheck check = new NumberCheck(problems, range);
        List<Double> numbers = IntStream.range(0, 2)
                .mapToObj(index -> check.number(element(key, array, index), array.get(index)))
                .flatMap(number -> number.stream().boxed())
                .toList();
        return numbers.size() == 2 ? Optional.of(numbers) : Optional.empty();
    }

    Optional<String> text(String key) {
        return ask(key).flatMap(value -> text(spot(key), value));
    }

    List<String> texts(String key) {
        Optional<Object> value = ask(key);
        if (value.isEmpty()) {
            return List.of();
        }
        if (!(value.get() instanceof TomlArray array)) {
            wrongType(spot(key), "a list of texts");
            return List.of();
        }
        List<String> texts = new ArrayList<>();
        for (int index = 0; index < array.size(); index++) {
            text(element(key, array, index), array.get(index)).ifPresent(texts::add);
        }
        return texts;
    }

    Optional<Boolean> flag(String key) {
        Optional<Object> value = ask(key);
        if (value.isPresent() && !(value.get() instanceof Boolean)) {
            wrongType(spot(key), "true or false");
            return Optional.empty();
        }
        return value.map(Boolean.class::cast);
    }

    /** One of the words of an enum; {@code fallback} when absent or wrong. */
    <E extends Enum<E>> E word(String key, E fallback) {
        List<E> constants =
                Stream.of(fallback.getDeclaringClass().getEnumConstants()).toList();
        Optional<String> word = oneOf(key, constants.stream().map(Shown::word).toList());
        return word.flatMap(text -> constants.stream()
                        .filter(constant -> Shown.word(constant).equals(text))
                        .findFirst())
                .orElse(fallback);
    }

    /** One of some words. */
    Optional<String> oneOf(String key, List<String> words) {
        Optional<String> written = text(key);
        if (written.isPresent() && !words.contains(written.get())) {
            unknownWord(spot(key), written.get(), words);
            return Optional.empty();
        }
        return written;
    }

    void unknownWord(Spot spot, String written, List<String> words) {
        List<Detail> details = new ArrayList<>();
        details.add(Detail.of("allowed", String.join(", ", words)));
        nearest(written, words).ifPresent(word -> details.add(Detail.of("nearest", word)));
        problems.error(FindingCode.PLAN_UNKNOWN_WORD, spot, details.toArray(new Detail[0]));
    }

    /** A table below this one; without content when it is absent or no table. */
    TableReader table(String key) {
        Optional<Object> value = ask(key);
        if (value.isPresent() && value.get() instanceof TomlTable below) {
            return new TableReader(spot(key), below, problems, all);
        }
        value.ifPresent(wrong -> wrongType(spot(key), "a table"));
        return new TableReader(new Spot(dotted(key), Optional.empty(), ""), Toml.parse(""), problems, all);
    }

    /** The tables of a list of tables. */
    List<TableReader> tables(String key) {
        Optional<Object> value = ask(key);
        if (value.isEmpty()) {
            return List.of();
        }
        if (!(value.get() instanceof TomlArray array) || !holdsTables(array)) {
            wrongType(spot(key), "a list of tables, each headed [[" + key + "]]");
            return List.of();
        }
        return IntStream.range(0, array.size())
                .mapToObj(index -> new TableReader(element(key, array, index), array.getTable(index), problems, all))
                .toList();
    }

    private static boolean holdsTables(TomlArray array) {
        return IntStream.range(0, array.size()).allMatch(index -> array.get(index) instanceof TomlTable);
    }

    /** Keys that this table may have. */
    void know(List<String> keys) {
        asked.addAll(keys);
    }

    /** A key that has to be there once its table is. */
    void need(String key) {
        asked.add(key);
        if (!has(key)) {
            problems.error(FindingCode.PLAN_MISSING_KEY, spot(key));
        }
    }

    /** Names every key of the whole plan that nobody asked for. */
    void finish() {
        for (TableReader reader : all) {
            reader.table.keySet().stream()
                    .filter(key -> !reader.asked.contains(key))
                    .forEach(reader::unknownKey);
        }
    }

    private void unknownKey(String key) {
        List<Detail> details = new ArrayList<>();
        details.add(Detail.of("allowed", String.join(", ", asked)));
        elsewhere(key).or(() -> nearest(key, asked)).ifPresent(near -> details.add(Detail.of("nearest", near)));
        problems.error(FindingCode.PLAN_UNKNOWN_KEY, spot(key), details.toArray(new Detail[0]));
    }

    private static Optional<String> nearest(String written, Collection<String> known) {
        return written.length() > LONGEST_WORD
                ? Optional.empty()
                : NearestNames.of(written, known).stream().findFirst();
    }

    /** The same key in another table. */
    private Optional<String> elsewhere(String key) {
        return all.stream()
                .filter(reader -> reader.asked.contains(key))
                .map(reader -> reader.dotted(key))
                .findFirst();
    }

    private Optional<Object> ask(String key) {
        asked.add(key);
        return find(key);
    }

    private Optional<Object> find(String key) {
        return Optional.ofNullable(table.get(List.of(key)));
    }

    private Optional<String> text(Spot spot, Object value) {
        if (!(value instanceof String text)) {
            wrongType(spot, "a text in quotes");
            return Optional.empty();
        }
        if (text.isBlank()) {
            wrongType(spot, "a text that is not empty");
            return Optional.empty();
        }
        return Optional.of(text);
    }

    private void wrongType(Spot spot, String wanted) {
        problems.error(FindingCode.PLAN_WRONG_TYPE, spot, Detail.of("want", wanted));
    }

    private Spot element(String key, TomlArray array, int index) {
        Optional<TomlPosition> own = Optional.ofNullable(array.inputPositionOf(index));
        return new Spot(dotted(key) + "[" + (index + 1) + "]", own, Shown.value(array.get(index)));
    }

    private String dotted(String key) {
        return path.isEmpty() ? Shown.key(key) : path + "." + Shown.key(key);
    }
}
