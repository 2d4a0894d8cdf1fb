package org.nextpull.report;

/** What is wrong with words that were typed into a field. */
public final class EntryText {
    /** A reason is missing. */
    public static final String REASON_NEEDED = "Say why; it is kept with the pull.";

    /** Nothing was typed. */
    public static final String NOTHING_SAID = "Nothing was said.";

    private EntryText() {}

    /** A field that holds no number. */
    public static String noNumber(String field, String text) {
        return field + " must be a number, not \"" + text + "\".";
    }

    /** A field that holds none of the words that it takes. */
    public static String noWord(String field, String words) {
        return field + " must be " + words + ".";
    }
}
