package org.nextpull.plan.text;

import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

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

    /** A table or a list that is written in the text alone. */
    IN_TEXT {
        @Override
        public String written(String typed) {
            return PlanValueText.text(typed);
        }
    };

    private static final Pattern TWO_NUMBERS =
            Pattern.compile("([+-]?[0-9.]+)\\s*(?:,|;|\\.\\.|\\bto\\b|\\s)\\s*([+-]?[0-9.]+)");

    /** As TOML; something of the wrong kind becomes a text, which reading names as wrong at its key. */
    public abstract String written(String typed);
}
