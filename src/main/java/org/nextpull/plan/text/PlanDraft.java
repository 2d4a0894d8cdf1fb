package org.nextpull.plan.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.nextpull.finding.Outcome;
import org.nextpull.plan.SweepPlan;
import org.tomlj.Toml;

/**
 * A plan while it is being written: its tables and keys as text, whether they make sense or not, with its comments. A key that no plan
 * has stays what it is until it is taken out. What {@link #text} writes is always TOML. Immutable.
 *
 * <p>Tables are named as places of findings name them: {@code engine}, {@code wire[1]}.
 */
public final class PlanDraft {
    private static final List<String> ORDER = List.of(
            "", "engine", "fuel", "blend", "dyno", "air", "band", "pull", "timing", "mixture", "limits", "start",
            "goal", "log", "wire");

    private final List<DraftTable> tables;
    private final List<String> commentsBelow;

    PlanDraft(List<DraftTable> tables, List<String> commentsBelow) {
        this.tables = List.copyOf(tables);
        this.commentsBelow = List.copyOf(commentsBelow);
    }

    /** A plan without a key. */
    public static PlanDraft empty() {
        return new PlanDraft(List.of(), List.of());
    }

    /** Reads any TOML; failed, with the findings of {@link PlanText}, only where the text is none. */
    public static Outcome<PlanDraft> of(String text, String fileName) {
        return PlanText.toml(text, fileName).map(parsed -> DraftReader.read(parsed, PlanText.plain(text)));
    }

    /** The text of the plan. */
    public String text() {
        StringBuilder text = new StringBuilder();
        for (DraftTable table : tables) {
            text.append(text.isEmpty() ? "" : "\n").append(table.text());
        }
        if (!commentsBelow.isEmpty()) {
            text.append(text.isEmpty() ? "" : "\n");
        }
        commentsBelow.forEach(comment -> text.append(comment).append('\n'));
        return text.toString();
    }

    /** What the text says as a plan, or all that is wrong with it. */
    public Outcome<SweepPlan> plan(String fileName) {
        return PlanText.read(text(), fileName);
    }

    public boolean has(String table) {
        return find(table).isPresent();
    }

    /** Names of all tables, in the order of the text; the empty name is that of the keys above the first. */
    public List<String> tables() {
        return tables.stream().map(DraftTable::name).toList();
    }

    /** Keys of a table, in the order of the text. */
    public List<String> keys(String table) {
        return find(table)
                .map(found -> found.lines().stream().map(DraftTable.Line::key).toList())
                .orElse(List.of());
    }

    /** The value of a key as a person would type it; empty where it is not written. */
    public Optional<String> typed(String table, String key) {
        return find(table).flatMap(found -> found.find(key)).map(line -> {
            Object value = Toml.parse("x = " + line.value()).get("x");
            return value == null ? line.value() : TomlValue.typed(value);
        });
    }

    /** Sets a key to what a person typed; a blank text takes it out. Makes its table where there is none. */
    public PlanDraft with(String table, String key, KeyKind kind, String typed) {
        if (typed.isBlank()) {
            return change(table, found -> found.without(key));
        }
        return withTable(table).change(table, found -> found.with(key, kind.written(typed)));
    }

    /** Has the table, empty where there was none. */
    public PlanDraft withTable(String table) {
        if (has(table)) {
            return this;
        }
        List<DraftTable> all = new ArrayList<>(tables);
        int place = (int)
                all.stream().filter(other -> rank(other.name()) <= rank(table)).count();
        all.add(place, DraftTable.named(table));
        return new PlanDraft(all, commentsBelow);
    }

    /** Has no such table; of a list those after it move up. */
    public PlanDraft withoutTable(String table) {
        List<DraftTable> left = new ArrayList<>();
        int[] kept = {0};
        String list = listOf(table);
        for (DraftTable other : tables) {
            if (other.name().equals(table)) {
                continue;
            }
            boolean sameList = !list.equals(table) && listOf(other.name()).equals(list);
            left.add(sameList ? other.renamed(list + "[" + ++kept[0] + "]") : other);
        }
        return new PlanDraft(left, commentsBelow);
    }

    private PlanDraft change(String table, UnaryOperator<DraftTable> change) {
        return new PlanDraft(
                tables.stream()
                        .map(found -> found.name().equals(table) ? change.apply(found) : found)
                        .toList(),
                commentsBelow);
    }

    private Optional<DraftTable> find(String table) {
        return tables.stream().filter(found -> found.name().equals(table)).findFirst();
    }

    static String listOf(String table) {
        return table.endsWith("]") ? table.substring(0, table.lastIndexOf('[')) : table;
    }

    private static int rank(String table) {
        int rank = ORDER.indexOf(listOf(table));
        return rank < 0 ? ORDER.size() : rank;
    }

    /** Keys above the first table have to stay there. */
    static Comparator<DraftTable> topFirst() {
        return Comparator.comparing(table -> !table.name().isEmpty());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof PlanDraft draft
                && tables.equals(draft.tables)
                && commentsBelow.equals(draft.commentsBelow);
    }

    @Override
    public int hashCode() {
        return tables.hashCode();
    }

    @Override
    public String toString() {
        return text();
    }
}
