package org.nextpull.window.page;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.nextpull.channel.AskedSetting;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/**
 * A question at the foot of the window.
 *
 * @param title what is asked
 * @param fields what can be filled in, the first has the focus; none asks for yes or no
 * @param take is given the fields' texts in order; it answers with what is wrong with them, and then the question stays
 */
public record Question(String title, List<Field> fields, Function<List<String>, Optional<String>> take) {
    /** A reason is missing. */
    public static final String REASON_NEEDED = "Say why; it is kept with the pull.";

    /** Nothing was typed. */
    public static final String NOTHING_SAID = "Nothing was said.";

    public Question {
        fields = List.copyOf(fields);
    }

    /** A question for yes or no: Enter does it, Escape does not. */
    public static Question whether(String title, Runnable act) {
        return new Question(title, List.of(), texts -> {
            act.run();
            return Optional.empty();
        });
    }

    /**
     * One field.
     *
     * @param name what it is
     * @param text what it holds at first
     * @param kind what is to be filled in
     * @param options what can be chosen; empty where it is typed
     */
    public record Field(String name, String text, Kind kind, List<String> options) {
        public Field {
            options = List.copyOf(options);
        }

        private Field(String name, String text, Kind kind) {
            this(name, text, kind, List.of());
        }

        /** What a field holds. */
        public enum Kind {
            /** A number or a word. */
            NARROW,
            /** A sentence. */
            WIDE,
            /** The path of a file, or of a folder where that will do; it can be chosen. */
            FILE,
            /** The path of a folder, which can be chosen. */
            FOLDER,
            /** One of a list. */
            CHOICE
        }

        public static Field narrow(String name, String text) {
            return new Field(name, text, Kind.NARROW);
        }

        public static Field wide(String name, String text) {
            return new Field(name, text, Kind.WIDE);
        }

        public static Field file(String name, String text) {
            return new Field(name, text, Kind.FILE);
        }

        public static Field folder(String name, String text) {
            return new Field(name, text, Kind.FOLDER);
        }

        /** One of these, the first at first. */
        public static Field choice(String name, List<String> options) {
            return new Field(name, options.get(0), Kind.CHOICE, options);
        }

        boolean isPath() {
            return kind == Kind.FILE || kind == Kind.FOLDER;
        }
    }

    /**
     * What a field of a question holds that takes a number: a value, or nothing, or what is wrong.
     *
     * @param value the number; empty for an empty field
     * @param fault what is wrong with it
     */
    public record FieldNumber(Optional<Double> value, Optional<String> fault) {
        /** A number with a point or a comma; an empty field is no number and no fault. */
        public static FieldNumber of(String field, String text) {
            String plain = text.strip().replace(',', '.');
            if (plain.isEmpty()) {
                return new FieldNumber(Optional.empty(), Optional.empty());
            }
            return plain.matches("[+-]?\\d{1,6}(\\.\\d{1,6})?")
                    ? new FieldNumber(Optional.of(Double.valueOf(plain)), Optional.empty())
                    : new FieldNumber(Optional.empty(), Optional.of(noNumber(field, text.strip())));
        }
    }

    /** A field that holds no number. */
    public static String noNumber(String field, String text) {
        return field + " must be a number, not \"" + text + "\".";
    }

    /** A field that holds none of the words that it takes. */
    public static String noWord(String field, String words) {
        return field + " must be " + words + ".";
    }

    /**
     * Takes a setting that was typed, or says what is wrong with it; what is empty is left out.
     *
     * @param offset whether the degrees are added to a map
     * @param texts spark, lambda and, where they are asked for, label and fuel
     * @param take is given the setting; answers with what is wrong with it
     */
    public static Optional<String> setting(
            boolean offset, List<String> texts, Function<AskedSetting, Optional<String>> take) {
        FieldNumber spark = FieldNumber.of(spark(offset), texts.get(0));
        FieldNumber lambda = FieldNumber.of("Lambda", texts.get(1));
        Optional<String> fault = spark.fault().or(lambda::fault);
        if (fault.isPresent()) {
            return fault;
        }
        if (lambda.value().filter(value -> value <= 0).isPresent()) {
            return Optional.of(noWord("Lambda", "a number above 0"));
        }
        Optional<Advance> deg = spark.value().map(Advance::ofDeg);
        return take.apply(AskedSetting.none()
                .withValues(
                        offset ? Optional.empty() : deg,
                        offset ? deg : Optional.empty(),
                        lambda.value().map(Lambda::of))
                .withConfiguration(
                        texts.stream().skip(2).findFirst().flatMap(Question::word),
                        texts.stream().skip(3).findFirst().flatMap(Question::word)));
    }

    /** What the field of the spark is called. */
    public static String spark(boolean offset) {
        return offset ? "Degrees added" : "Advance";
    }

    /** What was typed; empty where it is blank. */
    public static Optional<String> word(String text) {
        return Optional.of(text.strip()).filter(word -> !word.isEmpty());
    }
}
