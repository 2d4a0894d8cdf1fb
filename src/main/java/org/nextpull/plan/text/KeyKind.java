package org.nextpull.plan.text;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What a person types for a key, and how that is written in a plan. Whatever is typed, what is written is TOML. */
public enum KeyKind {
    /** Any text. */
    TEXT {
        @Override
        public String written(String typed) {
            return PlanValueText.text(typed);
        }
    },
    /** One of a few words. */
    WORD {
        @Override
        public String written(String typed) {
            return PlanValueText.text(typed);
        }
    },
    /** A number with a decimal point. */
    NUMBER {
        @Override
        public String written(String typed) {
            return TomlValue.ofNumber(typed);
        }
    },
    /** Yes or no. */
    FLAG {
        @Override
        public String written(String typed) {
            return "true".equals(typed) || "false".equals(typed) ? typed : PlanValueText.text(typed);
        }
    },
    /** Two numbers, the lower first. */
    WINDOW {
        @Override
        public String written(String typed) {
            Matcher two = TWO_NUMBERS.matcher(typed.strip());
            return two.matches()
                    ? "[" + TomlValue.ofNumber(two.group(1)) + ", " + TomlValue.ofNumber(two.group(2)) + "]"
                    : PlanValueText.text(typed);
        }
    },
    /** Texts with commas between them, or with semicolons where a text holds a comma. */
    TEXTS {
        @Override
        public String written(String typed) {
            return Arrays.stream(typed.split(typed.contains(";") ? ";" : ","))
                    .map(String::strip)
                    .map(PlanValueText::text)
                    .collect(Collectors.joining(", ", "[", "]"));
        }
    },

    /** Numbers with commas or spaces between them, as a row of a spreadsheet is pasted. */
    NUMBERS {
        @Override
        public String written(String typed) {
            return list(BETWEEN_NUMBERS.splitAsStream(typed.strip()));
        }
    },

    /** A number at each speed: {@code 3500: 18, 5000: 21}, or as a spreadsheet pastes it. */
    CELLS {
        @Override
        public String written(String typed) {
            List<String> numbers = BETWEEN_CELLS.splitAsStream(typed.strip()).toList();
            return numbers.size() % 2 == 0
                    ? IntStream.range(0, numbers.size() / 2)
                            .mapToObj(cell -> list(numbers.subList(2 * cell, 2 * cell + 2).stream()))
                            .collect(Collectors.joining(", ", "[", "]"))
                    : PlanValueText.text(typed);
        }
    },

    /** A table that is written in the text alone. */
    IN_TEXT {
        @Override
        public String written(String typed) {
            return PlanValueText.text(typed);
        }
    };

    private static final Pattern BETWEEN_CELLS = Pattern.compile("[\\s,;:=]+");
    private static final Pattern BETWEEN_NUMBERS = Pattern.compile("\\s*(?:,|;|\\.\\.|\\bto\\b|\\s)\\s*");
    private static final Pattern TWO_NUMBERS = Pattern.compile("([+-]?[0-9.]+)" + BETWEEN_NUMBERS + "([+-]?[0-9.]+)");

    private static String list(Stream<String> numbers) {
        return numbers.map(TomlValue::ofNumber).collect(Collectors.joining(", ", "[", "]"));
    }

    /** As TOML; something of the wrong kind becomes a text, which reading names as wrong at its key. */
    public abstract String written(String typed);
}
