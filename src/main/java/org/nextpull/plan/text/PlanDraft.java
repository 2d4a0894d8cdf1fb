package org.nextpull.plan.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.nextpull.finding.Outcome;
import org.nextpull.plan.SweepPlan;
import org.tomlj.Toml;
import org.tomlj.TomlArray;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;
import org.tomlj.TomlVersion;

/**
 * The text of a plan while it is being written, whether it makes sense or not. A change touches the key that it is about, and that only where it says something else; every other
 * line, comment and blank line stays. A key that no plan has stays until it is taken out. {@link #text} is always TOML. Immutable.
 *
 * <p>Tables are named as places of findings name them: {@code engine}, {@code wire[1]}; the empty name is that of the keys above the
 * first.
 */
public final class PlanDraft {
    private final String text;
    private final TomlTable parsed;
    private final Optional<TakenOut> takenOut;

    private PlanDraft(String text, TomlTable parsed, Optional<TakenOut> takenOut) {
        this.text = text;
        this.parsed = parsed;
        this.takenOut = takenOut;
    }

    /** What was taken out last, and the draft that still had it: put in again it stands where it stood. */
    private record TakenOut(String name, PlanDraft before) {}

    /** A plan without a key. */
    public static PlanDraft empty() {
        return new PlanDraft("", Toml.parse(""), Optional.empty());
    }

    /** Reads any TOML; failed, with the findings of {@link PlanText}, only where the text is none. */
    public static Outcome<PlanDraft> of(String text, String fileName) {
        return PlanText.toml(text, fileName)
                .map(parsed -> new PlanDraft(PlanText.plain(text), parsed, Optional.empty()));
    }

    /** The text of the plan. */
    public String text() {
        return text;
    }

    /** What the text says as a plan, or all that is wrong with it. */
    public Outcome<SweepPlan> plan(String fileName) {
        return PlanText.read(text, fileName);
    }

    public boolean has(String table) {
        return tables().contains(table);
    }

    /** Names of all tables, in the order of the text. */
    public List<String> tables() {
        Map<String, Integer> lines = new LinkedHashMap<>();
        for (String key : parsed.keySet()) {
            Object value = parsed.get(List.of(key));
            if (value instanceof TomlTable && PlanValueText.key(key).equals(key)) {
                lines.put(key, line(parsed.inputPositionOf(List.of(key))));
            } else if (value instanceof TomlArray array
                    && holdsTables(array)
                    && PlanValueText.key(key).equals(key)) {
                IntStream.range(0, array.size())
                        .forEach(index -> lines.put(key + "[" + (index + 1) + "]", line(array.inputPositionOf(index))));
            } else {
                lines.put("", -1);
            }
        }
        return lines.entrySet().stream()
                .sorted(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .toList();
    }

    private static int line(TomlPosition position) {
        return position == null ? 0 : position.line();
    }

    private static boolean holdsTables(TomlArray array) {
        return !array.isEmpty()
                && IntStream.range(0, array.size()).allMatch(index -> array.get(index) instanceof TomlTable);
    }

    /** Keys of a table, in the order of the text; of the empty name, those that are no table. */
    public List<String> keys(String table) {
        TomlTable found = find(table);
        List<String> keys = new ArrayList<>(found.keySet());
        keys.sort(Comparator.comparingInt(key -> line(found.inputPositionOf(List.of(key)))));
        if (table.isEmpty()) {
            List<String> tables = tables().stream().map(PlanDraft::listOf).toList();
            keys.removeIf(tables::contains);
        }
        return keys;
    }

    /** The value of a key as a person would type it; empty where it is not written. */
    public Optional<String> typed(String table, String key) {
        return Optional.ofNullable(find(table).get(List.of(key))).map(TomlValue::typed);
    }

    /** What holds where a key is not written, as a person would type it; it may follow from other keys. */
    public Optional<String> usual(String table, PlanKey<?> key) {
        return key.usualTyped(reader(table));
    }

    /** The words of a key, of which some may be given by other tables; empty for a key that takes anything. */
    public List<String> words(String table, PlanKey<?> key) {
        return key.words(reader(table));
    }

    private TableReader reader(String table) {
        TableReader top = TableReader.top(parsed, new PlanProblems(""));
        PlanTables.of(top);
        return top.beside(table);
    }

    /** Sets a key to what a person typed; a blank text takes it out. Makes its table where there is none. */
    public PlanDraft with(String table, String key, KeyKind kind, String typed) {
        String name = table + "." + key;
        if (!typed.isBlank()) {
            PlanDraft from = before(name).orElse(this);
            String value = kind.written(typed);
            return from.says(table, key, value)
                    ? from
                    : from.changed(new TomlEdit(from.text).set(table, key, value), Optional.empty());
        }
        return find(table).get(List.of(key)) == null
                ? this
                : changed(new TomlEdit(text).without(table, key), Optional.of(name));
    }

    /** Whether a key has a value already, perhaps in another spelling. */
    private boolean says(String table, String key, String value) {
        Object written = find(table).get(List.of(key));
        return written != null && TomlValue.written(written).equals(value);
    }

    /** Has the table, empty where there was none. */
    public PlanDraft withTable(String table) {
        return has(table)
                ? this
                : before(table).orElseGet(() -> changed(new TomlEdit(text).withTable(table), Optional.empty()));
    }

    /** Has no such table; of a list those after it move up. */
    public PlanDraft withoutTable(String table) {
        return has(table) ? changed(new TomlEdit(text).withoutTable(table), Optional.of(table)) : this;
    }

    private Optional<PlanDraft> before(String name) {
        return takenOut.filter(out -> out.name().equals(name)).map(TakenOut::before);
    }

    private PlanDraft changed(String newText, Optional<String> gone) {
        TomlTable newParsed = Toml.parse(newText, TomlVersion.V1_0_0);
        return new PlanDraft(newText, newParsed, gone.map(name -> new TakenOut(name, this)));
    }

    private TomlTable find(String table) {
        if (table.isEmpty()) {
            return parsed;
        }
        String list = listOf(table);
        Object value = parsed.get(List.of(list));
        if (value instanceof TomlArray array && !list.equals(table)) {
            int index = Integer.parseInt(table.substring(list.length() + 1, table.length() - 1)) - 1;
            return index < array.size() && array.get(index) instanceof TomlTable member ? member : Toml.parse("");
        }
        return value instanceof TomlTable found && list.equals(table) ? found : Toml.parse("");
    }

    static String listOf(String table) {
        return table.endsWith("]") ? table.substring(0, table.lastIndexOf('[')) : table;
    }

    /** The place of a table in the order of the handbook. */
    static int rank(String table) {
        List<String> order = PlanKeys.tableNames();
        int rank = order.indexOf(listOf(table));
        return rank < 0 ? order.size() : rank;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof PlanDraft draft && text.equals(draft.text);
    }

    @Override
    public int hashCode() {
        return text.hashCode();
    }

    @Override
    public String toString() {
        return text;
    }
}
