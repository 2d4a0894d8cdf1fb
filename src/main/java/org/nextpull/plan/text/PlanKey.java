package org.nextpull.plan.text;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.nextpull.unit.Unit;
import org.tomlj.Toml;

/**
 * A key of a plan: all that its reader, its writer, the form of the window and the handbook know of it. The key is in the list of one
 * {@link PlanTable}; all of those are in {@link PlanKeys}. Immutable.
 */
public final class PlanKey<T> {
    private final String name;
    private final KeyFormat<T> format;
    private final Said said;
    private final Optional<Function<TableReader, T>> usual;

    private PlanKey(String name, KeyFormat<T> format, Said said, Optional<Function<TableReader, T>> usual) {
        this.name = name;
        this.format = format;
        this.said = said;
        this.usual = usual;
    }

    /**
     * What people read of a key.
     *
     * @param label what the form calls it
     * @param help why it matters, in sentences
     * @param unit its unit where that is none of {@link Unit}
     * @param needed what the handbook says in place of a default
     */
    private record Said(String label, String help, String unit, String needed) {}

    static <T> PlanKey<T> of(String name, KeyFormat<T> format) {
        return new PlanKey<>(name, format, new Said(name, "", "", "-"), Optional.empty());
    }

    PlanKey<T> said(String label, String help) {
        return new PlanKey<>(name, format, new Said(label, help, said.unit(), said.needed()), usual);
    }

    PlanKey<T> in(String unit) {
        return new PlanKey<>(name, format, new Said(said.label(), said.help(), unit, said.needed()), usual);
    }

    /** The handbook says so; the reader asks for it by {@link TableReader#need}. */
    PlanKey<T> needed(String when) {
        return new PlanKey<>(name, format, new Said(said.label(), said.help(), said.unit(), when), usual);
    }

    PlanKey<T> usual(T value) {
        return usual(table -> value);
    }

    /** A default that follows from other keys, which {@link TableReader#peek} gives. */
    PlanKey<T> usual(Function<TableReader, T> found) {
        return new PlanKey<>(name, format, said, Optional.of(found));
    }

    /** As the plan writes it. */
    public String name() {
        return name;
    }

    /** What a person types for it. */
    public KeyKind kind() {
        return format.kind();
    }

    /** The unit that the plan holds it in. */
    public Optional<Unit> unit() {
        return format.unit();
    }

    /** The sign of its unit as people read it; blank without one. */
    public String unitSign() {
        return format.unit().map(Unit::sign).orElse(said.unit());
    }

    public String label() {
        return said.label();
    }

    /** Why it matters, in sentences. */
    public String help() {
        return said.help();
    }

    /** The row of the handbook's table: key, default, range, meaning. */
    String handbookRow(TableReader nothing) {
        String fallback = usualWritten(nothing).map(text -> "`" + text + "`").orElse(said.needed());
        return "| `" + name + "` | " + fallback + " | " + format.allowed() + " | " + said.help() + " |";
    }

    KeyFormat<T> format() {
        return format;
    }

    Optional<T> usual(TableReader table) {
        return usual.map(found -> found.apply(table));
    }

    /** The default as TOML. */
    Optional<String> usualWritten(TableReader table) {
        return usual(table).map(format.written());
    }

    /** The default as a person would type it. */
    Optional<String> usualTyped(TableReader table) {
        return usualWritten(table).map(PlanKey::typed);
    }

    List<String> words(TableReader table) {
        return format.words().apply(table);
    }

    /** A value as a person would type it; what is no TOML stays as it is. */
    static String typed(String written) {
        Object value = Toml.parse("x = " + written).get("x");
        return value == null ? written : TomlValue.typed(value);
    }

    /**
     * What a number may be, in the unit of its key. Wide enough for any engine; it catches wrong units and slips of the hand.
     *
     * @param low lowest allowed
     * @param high highest allowed
     */
    record Range(double low, double high) {
        static final Range FRACTION = new Range(0, 1);
        static final Range RPM = new Range(100, 30_000);
        static final Range ADVANCE_DEG = new Range(-60, 90);
        static final Range LAMBDA = new Range(0.3, 2.5);
        static final Range ANY_CELSIUS = new Range(-60, 300);

        /** As the handbook writes it. */
        String text() {
            return PlanValueText.number(low) + " to " + PlanValueText.number(high);
        }

        boolean holds(double value) {
            return value >= low && value <= high;
        }
    }
}
