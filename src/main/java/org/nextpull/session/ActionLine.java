package org.nextpull.session;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.KnockMark;
import org.nextpull.plan.Limit;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/**
 * An act as one line of text, which is kept: a word and {@code name=value} parts with tabs between them; tab, line end, return and
 * backslash within a value stand as {@code \t}, {@code \n}, {@code \r} and {@code \\}.
 */
public final class ActionLine {
    private static final String PULL = "pull";
    private static final String TEXT = "text";
    private static final String KEY = "key";
    private static final String LIMITS = "limits";
    private static final String VALUE = "value";
    private static final String ADVANCE = "advance";
    private static final String OFFSET = "offset";
    private static final String LAMBDA = "lambda";
    private static final String FUEL = "fuel";
    private static final String LABEL = "label";
    private static final String KNOCK = "knock";
    private static final String NOTE = "note";

    private ActionLine() {}

    /** The line, without a line end. */
    public static String write(OperatorAction act) {
        Parts parts = new Parts();
        StringBuilder line = new StringBuilder(act.in(parts));
        parts.byName.forEach(
                (name, value) -> line.append('\t').append(name).append('=').append(escaped(value)));
        return line.toString();
    }

    /** The word of an act; takes down its parts on the way. */
    private static final class Parts implements OperatorAction.Cases<String> {
        private final Map<String, String> byName = new LinkedHashMap<>();

        private void on(int pull) {
            byName.put(PULL, Integer.toString(pull));
        }

        @Override
        public String strike(OperatorAction.Strike strike) {
            on(strike.pull());
            byName.put(TEXT, strike.why());
            return "strike";
        }

        @Override
        public String restore(OperatorAction.Restore restore) {
            on(restore.pull());
            return "restore";
        }

        @Override
        public String lift(OperatorAction.Lift lift) {
            on(lift.pull());
            byName.put(TEXT, lift.why());
            return "lift";
        }

        @Override
        public String correct(OperatorAction.Correct correct) {
            put(byName, correct.pull(), correct.setting());
            return "correct";
        }

        @Override
        public String setting(OperatorAction.Setting setting) {
            put(byName, setting.pull(), setting.setting());
            return setting.assumed() ? "assumed" : "set";
        }

        @Override
        public String note(OperatorAction.Note note) {
            note.pull().ifPresent(this::on);
            byName.put(TEXT, note.text());
            return "note";
        }

        @Override
        public String changeLimit(OperatorAction.ChangeLimit change) {
            byName.put(KEY, change.key());
            byName.put(VALUE, Double.toString(change.value()));
            return "limit";
        }

        @Override
        public String ownWatch(OperatorAction.OwnWatch watch) {
            byName.put(LIMITS, watch.limits().stream().map(Limit::id).collect(Collectors.joining(",")));
            return "unwatched";
        }

        @Override
        public String next(OperatorAction.Next next) {
            next.label().ifPresent(label -> byName.put(LABEL, label));
            next.fuel().ifPresent(fuel -> byName.put(FUEL, fuel));
            return "next";
        }
    }

    private static void put(Map<String, String> parts, int pull, AskedSetting asked) {
        EngineSetting setting = asked.setting();
        parts.put(PULL, Integer.toString(pull));
        setting.advance().ifPresent(value -> parts.put(ADVANCE, Double.toString(value.deg())));
        setting.offset().ifPresent(value -> parts.put(OFFSET, Double.toString(value.deg())));
        setting.lambda().ifPresent(value -> parts.put(LAMBDA, Double.toString(value.value())));
        setting.fuel().ifPresent(value -> parts.put(FUEL, value));
        setting.label().ifPresent(value -> parts.put(LABEL, value));
        if (asked.knock() != KnockMark.NOT_MEASURED) {
            parts.put(KNOCK, asked.knock().name().toLowerCase(Locale.ROOT));
        }
        setting.note().ifPresent(value -> parts.put(NOTE, value));
    }

    /** Reads a line; empty when it is none of an act. */
    public static Optional<OperatorAction> read(String line) {
        List<String> fields = List.of(line.split("\t", -1));
        Map<String, String> parts = new LinkedHashMap<>();
        for (String field : fields.subList(1, fields.size())) {
            int equals = field.indexOf('=');
            if (equals < 1) {
                return Optional.empty();
            }
            parts.put(field.substring(0, equals), plain(field.substring(equals + 1)));
        }
        try {
            return act(fields.get(0), parts);
        } catch (IllegalArgumentException broken) {
            // a number that is none, or out of the range of what it measures
            return Optional.empty();
        }
    }

    private static Optional<OperatorAction> act(String word, Map<String, String> parts) {
        return switch (word) {
            case "strike" -> Optional.of(new OperatorAction.Strike(pull(parts), need(parts, TEXT)));
            case "restore" -> Optional.of(new OperatorAction.Restore(pull(parts)));
            case "lift" -> Optional.of(new OperatorAction.Lift(pull(parts), need(parts, TEXT)));
            case "correct" -> Optional.of(new OperatorAction.Correct(pull(parts), setting(parts)));
            case "set" -> Optional.of(new OperatorAction.Setting(pull(parts), setting(parts), false));
            case "assumed" -> Optional.of(new OperatorAction.Setting(pull(parts), setting(parts), true));
            case "note" ->
                Optional.of(new OperatorAction.Note(
                        parts.containsKey(PULL) ? OptionalInt.of(pull(parts)) : OptionalInt.empty(),
                        need(parts, TEXT)));
            case "limit" ->
                Optional.of(new OperatorAction.ChangeLimit(need(parts, KEY), Double.parseDouble(need(parts, VALUE))));
            case "unwatched" ->
                Optional.of(new OperatorAction.OwnWatch(
                        Arrays.stream(need(parts, LIMITS).split(","))
                                .map(Limit::of)
                                .toList()));
            case "next" -> Optional.of(new OperatorAction.Next(part(parts, LABEL), part(parts, FUEL)));
            default -> Optional.empty();
        };
    }

    private static AskedSetting setting(Map<String, String> parts) {
        return AskedSetting.none()
                .withValues(
                        part(parts, ADVANCE).map(Double::valueOf).map(Advance::ofDeg),
                        part(parts, OFFSET).map(Double::valueOf).map(Advance::ofDeg),
                        part(parts, LAMBDA).map(Double::valueOf).map(Lambda::of))
                .withConfiguration(part(parts, LABEL), part(parts, FUEL))
                .withKnock(part(parts, KNOCK)
                        .map(mark -> KnockMark.valueOf(mark.toUpperCase(Locale.ROOT)))
                        .orElse(KnockMark.NOT_MEASURED))
                .withNote(part(parts, NOTE));
    }

    private static int pull(Map<String, String> parts) {
        return Integer.parseInt(need(parts, PULL));
    }

    private static Optional<String> part(Map<String, String> parts, String name) {
        return Optional.ofNullable(parts.get(name));
    }

    private static String need(Map<String, String> parts, String name) {
        return part(parts, name).orElseThrow(() -> new IllegalArgumentException("a part is missing: " + name));
    }

    private static String escaped(String value) {
        return value.replace("\\", "\\\\")
                .replace("\t", "\\t")
                .replace("\n", "\\n")
                .replace("\r", "\\r");
    }

    private static String plain(String value) {
        StringBuilder text = new StringBuilder();
        for (int at = 0; at < value.length(); at++) {
            char c = value.charAt(at);
            if (c == '\\' && at + 1 < value.length()) {
                at++;
                char escape = value.charAt(at);
                text.append(
                        switch (escape) {
                            case 't' -> '\t';
                            case 'n' -> '\n';
                            case 'r' -> '\r';
                            default -> escape;
                        });
            } else {
                text.append(c);
            }
        }
        return text.toString();
    }
}
