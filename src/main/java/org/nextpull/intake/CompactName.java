package org.nextpull.intake;

import java.text.Normalizer;

/**
 * A name without what differs between loggers: small letters, digits, {@code %} and {@code °} only, accents taken off; and, for each
 * character, where it stood in the name.
 */
final class CompactName {
    private final String original;
    private final String text;
    private final int[] origins;

    private CompactName(String original, String text, int[] origins) {
        this.original = original;
        this.text = text;
        this.origins = origins;
    }

    static CompactName of(String name) {
        StringBuilder text = new StringBuilder();
        int[] origins = new int[name.length() * 2 + 1];
        for (int at = 0; at < name.length() && text.length() < origins.length; at++) {
            char c = name.charAt(at);
            if (c < 0x80) {
                if (Character.isLetterOrDigit(c) || c == '%') {
                    origins[text.length()] = at;
                    text.append(Character.toLowerCase(c));
                }
            } else {
                String plain = plain(c);
                for (int index = 0; index < plain.length() && text.length() < origins.length; index++) {
                    origins[text.length()] = at;
                    text.append(plain.charAt(index));
                }
            }
        }
        return new CompactName(name, text.toString(), origins);
    }

    String text() {
        return text;
    }

    /** The original text from a position of the compact one, without the separators before it. */
    String originalFrom(int position) {
        return position >= text.length()
                ? ""
                : original.substring(origins[position]).strip();
    }

    private static String plain(char c) {
        if (c == '\u00b0' || c == '\u00ba') {
            return "\u00b0";
        }
        if (c == '\u00df') {
            return "ss";
        }
        if (c == '\u03bb') {
            // a spelling of lambda: every start would load Java's table of accents for it
            return "\u03bb";
        }
        String parts = Normalizer.normalize(String.valueOf(Character.toLowerCase(c)), Normalizer.Form.NFKD);
        StringBuilder letters = new StringBuilder();
        parts.chars().filter(Character::isLetterOrDigit).forEach(letter -> letters.append((char) letter));
        return letters.toString();
    }
}
