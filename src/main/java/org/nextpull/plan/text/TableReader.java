package org.nextpull.plan.text;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.nextpull.finding.Detail;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.NearestNames;
import org.nextpull.plan.text.PlanKey.Range;
import org.tomlj.Toml;
import org.tomlj.TomlArray;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/** Reads one table of a plan. {@link #finish} names every key that the list does not have: nothing in a plan is silently left out. */
final class TableReader {
    private static final int LONGEST_WORD = 64;

    private final String path;
    private final TomlTable table;
    private final Optional<TomlPosition> position;
    private final PlanProblems problems;
    /** The keys that this table may have; listed where it has one that was not asked for. */
    private final Supplier<List<String>> known;

    private final Set<String> asked = new HashSet<>();
    private final List<TableReader> all;

    private TableReader(
            PlanProblems.Spot spot,
            TomlTable table,
            Supplier<List<String>> known,
            PlanProblems problems,
            List<TableReader> all) {
        this.path = spot.key();
        this.position = spot.position();
        this.table = table;
        this.known = known;
        this.problems = problems;
        this.all = all;
        all.add(this);
    }

    /** The top of a plan. */
    static TableReader top(TomlTable table, PlanProblems problems) {
        return new TableReader(
                new PlanProblems.Spot("", Optional.empty(), ""),
                table,
                PlanKeys::tableNames,
                problems,
                new ArrayList<>());
    }

    /** An empty plan. */
    static TableReader nothing() {
        return top(Toml.parse(""), new PlanProblems(""));
    }

    PlanProblems problems() {
        return problems;
    }

    /** Whether the plan has this table. */
    boolean isPresent() {
        return position.isPresent();
    }

    boolean has(PlanKey<?> key) {
        return has(key.name());
    }

    boolean has(String key) {
        return table.keySet().contains(key);
    }

    Set<String> keys() {
        return table.keySet();
    }

    PlanProblems.Spot spot() {
        return new PlanProblems.Spot(path, position, "");
    }

    /** Where a key stands; one that is not written shows its default and the place of its table. */
    PlanProblems.Spot spot(PlanKey<?> key) {
        return has(key)
                ? spot(key.name())
                : new PlanProblems.Spot(
                        dotted(key.name()), position, key.usualWritten(this).orElse(""));
    }

    PlanProblems.Spot spot(String key) {
        Optional<TomlPosition> own = Optional.ofNullable(table.inputPositionOf(List.of(key)));
        return new PlanProblems.Spot(
                dotted(key),
                own.or(() -> position),
                value(key).map(PlanValueText::value).orElse(""));
    }

    /** What is written for a key; empty when it is absent or wrong. */
    <T> Optional<T> find(PlanKey<T> key) {
        asked.add(key.name());
        return key.format().read().apply(this, key.name());
    }

    OptionalDouble number(PlanKey<Double> key) {
        return find(key).stream().mapToDouble(Double::doubleValue).findFirst();
    }

    /** What holds for a key that has a default. */
    <T> T get(PlanKey<T> key) {
        return find(key)
                .or(() -> key.usual(this))
                .orElseThrow(() -> new IllegalStateException("no default: " + key.name()));
    }

    /** The value of a key that has to be there. */
    <T> Optional<T> need(PlanKey<T> key) {
        require(key);
        return find(key);
    }

    void require(PlanKey<?> key) {
        if (!has(key)) {
            problems.error(FindingCode.PLAN_MISSING_KEY, spot(key));
        }
    }

    /** What holds for a key, without a word on what is wrong with it. */
    <T> Optional<T> peek(PlanKey<T> key) {
        TableReader quiet = new TableReader(spot(), table, known, new PlanProblems(""), new ArrayList<>(all));
        return quiet.find(key).or(() -> key.usual(quiet));
    }

    /** Another table of the same plan; of one that it has not, nothing. */
    TableReader beside(String other) {
        return all.stream()
                .filter(reader -> reader.path.equals(other))
                .findFirst()
                .orElseGet(TableReader::nothing);
    }

    /** All tables of a list in the same plan. */
    List<TableReader> members(PlanTable<?> list) {
        return all.stream()
                .filter(reader -> reader.path.startsWith(list.name() + "[") && !reader.path.contains("."))
                .toList();
    }

    OptionalDouble number(String key, Range range) {
        Optional<Object> value = value(key);
        return value.isEmpty()
                ? OptionalDouble.empty()
                : new PlanProblems.NumberCheck(problems, range).number(spot(key), value.get());
    }

    OptionalInt whole(String key, Range range) {
        Optional<Object> value = value(key);
        return value.isEmpty()
                ? OptionalInt.empty()
                : new PlanProblems.NumberCheck(problems, range).whole(spot(key), value.get());
    }

    Optional<String> text(String key) {
        return value(key).flatMap(value -> text(spot(key), value));
    }

    Optional<Boolean> flag(String key) {
        Optional<Object> value = value(key);
        if (value.isPresent() && !(value.get() instanceof Boolean)) {
            wrongType(spot(key), "true or false");
            return Optional.empty();
        }
        return value.map(Boolean.class::cast);
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

    void unknownWord(PlanProblems.Spot spot, String written, List<String> words) {
        List<Detail> details = new ArrayList<>();
        details.add(Detail.of("allowed", String.join(", ", words)));
        nearest(written, words).ifPresent(word -> details.add(Detail.of("nearest", word)));
        problems.error(FindingCode.PLAN_UNKNOWN_WORD, spot, details.toArray(new Detail[0]));
    }

    /** A table of the list below this one. */
    TableReader table(PlanTable<?> listed) {
        return table(listed.name(), listed::keyNames);
    }

    /** Says that this plan does not go by a key, where it has it. */
    void notUsed(PlanKey<?> key) {
        if (has(key)) {
            problems.warning(FindingCode.PLAN_KEY_UNUSED, spot(key));
        }
    }

    /** A table below this one, with the keys that it may have; without content when it is absent or no table. */
    TableReader table(String key, Supplier<List<String>> keys) {
        asked.add(key);
        Optional<Object> value = value(key);
        if (value.isPresent() && value.get() instanceof TomlTable below) {
            return new TableReader(spot(key), below, keys, problems, all);
        }
        value.ifPresent(wrong -> wrongType(spot(key), "a table"));
        return new TableReader(
                new PlanProblems.Spot(dotted(key), Optional.empty(), ""), Toml.parse(""), keys, problems, all);
    }

    /** The names in a table below this one. */
    Set<String> keysBelow(String key) {
        return value(key).orElse("") instanceof TomlTable below ? below.keySet() : Set.of();
    }

    /** The tables of a list of tables. */
    List<TableReader> tables(PlanTable<?> listed) {
        String key = listed.name();
        asked.add(key);
        Optional<Object> value = value(key);
        if (value.isEmpty()) {
            return List.of();
        }
        if (!(value.get() instanceof TomlArray array) || !holdsTables(array)) {
            wrongType(spot(key), "a list of tables, each headed [[" + key + "]]");
            return List.of();
        }
        return IntStream.range(0, array.size())
                .mapToObj(index -> new TableReader(
                        element(key, array, index), array.getTable(index), listed::keyNames, problems, all))
                .toList();
    }

    private static boolean holdsTables(TomlArray array) {
        return IntStream.range(0, array.size()).allMatch(index -> array.get(index) instanceof TomlTable);
    }

    /** Names every key of the whole plan that no list has. */
    void finish() {
        for (TableReader reader : all) {
            reader.table.keySet().stream()
                    .filter(key -> !reader.asked.contains(key))
                    .filter(key -> !reader.known.get().contains(key))
                    .forEach(reader::unknownKey);
        }
    }

    private void unknownKey(String key) {
        List<Detail> details = new ArrayList<>();
        details.add(Detail.of("allowed", String.join(", ", known.get())));
        elsewhere(key).or(() -> nearest(key, known.get())).ifPresent(near -> details.add(Detail.of("nearest", near)));
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
                .filter(reader -> reader.known.get().contains(key))
                .map(reader -> reader.dotted(key))
                .findFirst();
    }

    Optional<Object> value(String key) {
        return Optional.ofNullable(table.get(List.of(key)));
    }

    Optional<String> text(PlanProblems.Spot spot, Object value) {
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

    void wrongType(PlanProblems.Spot spot, String wanted) {
        problems.error(FindingCode.PLAN_WRONG_TYPE, spot, Detail.of("want", wanted));
    }

    PlanProblems.Spot element(String key, TomlArray array, int index) {
        Optional<TomlPosition> own = Optional.ofNullable(array.inputPositionOf(index));
        return new PlanProblems.Spot(dotted(key) + "[" + (index + 1) + "]", own, PlanValueText.value(array.get(index)));
    }

    private String dotted(String key) {
        return path.isEmpty() ? PlanValueText.key(key) : path + "." + PlanValueText.key(key);
    }
}
