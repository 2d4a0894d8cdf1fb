package org.nextpull.plan.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * A table of a plan: its keys in the order of the handbook, each with where its value is in the record that the table becomes.
 * Immutable.
 */
public final class PlanTable<R> {
    private final String name;
    private final String title;
    private final String purpose;
    private final Presence presence;
    /** Lists the keys; not before it is asked for them, since reading a plan that is in order asks for none. */
    private final Consumer<Listing<R>> keys;

    private PlanTable(String name, String title, String purpose, Presence presence, Consumer<Listing<R>> keys) {
        this.name = name;
        this.title = title;
        this.purpose = purpose;
        this.presence = presence;
        this.keys = keys;
    }

    /** Whether a plan may do without a table, and how the form shows it. */
    public enum Presence {
        /** Its defaults hold where it is not written, so the form always shows it. */
        ALWAYS,
        /** Its presence means something: it can be switched on and off. */
        SWITCHED,
        /** There can be any number of them. */
        LISTED,
        /** Any number of them, which only the text shows. */
        LISTED_IN_TEXT
    }

    private record Entry<R, T>(PlanKey<T> key, Function<R, Optional<T>> value) {
        private Optional<String> line(R from) {
            return value.apply(from)
                    .map(found -> key.name() + " = " + key.format().written().apply(found));
        }
    }

    static <R> PlanTable<R> of(
            String name, Presence presence, String title, String purpose, Consumer<Listing<R>> keys) {
        return new PlanTable<>(name, title, purpose, presence, keys);
    }

    /** Takes down keys in their order. */
    static final class Listing<R> {
        private final List<Entry<R, ?>> entries = new ArrayList<>();

        private Listing() {}

        /** A key that the record always has a value of. */
        <T> Listing<R> key(PlanKey<T> key, Function<R, T> value) {
            return maybe(key, from -> Optional.of(value.apply(from)));
        }

        <T> Listing<R> maybe(PlanKey<T> key, Function<R, Optional<T>> value) {
            entries.add(new Entry<>(key, value));
            return this;
        }

        Listing<R> number(PlanKey<Double> key, Function<R, OptionalDouble> value) {
            return maybe(key, from -> value.apply(from).stream().boxed().findFirst());
        }
    }

    private List<Entry<R, ?>> entries() {
        Listing<R> listing = new Listing<>();
        keys.accept(listing);
        return listing.entries;
    }

    /** The table's text; empty where the record holds nothing. */
    String write(R from) {
        List<String> lines =
                entries().stream().flatMap(entry -> entry.line(from).stream()).toList();
        return lines.isEmpty() ? "" : header() + "\n" + String.join("\n", lines) + "\n\n";
    }

    /** As the plan writes it, without number. */
    public String name() {
        return name;
    }

    /** What the form calls it. */
    public String title() {
        return title;
    }

    /** What it is for, a sentence. */
    public String purpose() {
        return purpose;
    }

    public Presence presence() {
        return presence;
    }

    public List<PlanKey<?>> keys() {
        List<PlanKey<?>> keys = new ArrayList<>();
        entries().forEach(entry -> keys.add(entry.key()));
        return keys;
    }

    boolean isList() {
        return presence == Presence.LISTED || presence == Presence.LISTED_IN_TEXT;
    }

    String header() {
        return isList() ? "[[" + name + "]]" : "[" + name + "]";
    }

    List<String> keyNames() {
        return entries().stream().map(entry -> entry.key().name()).toList();
    }
}
