package org.nextpull.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What can be done by hand while a day runs, in the order in which it is listed: with the key that asks for it and the words that are typed. */
public enum HandAct {
    /** What is set for the next pull; typed as numbers alone. */
    SETTING("S", "setting of the next pull", "", ""),
    KNOCK("K", "knock heard in the pull, or not", "knock quiet", """
            knock, quiet      mark the pull that is running, or the last one: knock was heard, or none was
            """),
    CORRECT("C", "correct the setting of the pull", "correct", """
            correct 3 26 0.87 say what pull 3 was really run with
            """),
    EXCLUDE("X", "exclude the selected pull, or reinstate it", "exclude strike reinstate restore", """
            exclude 3 reason  take pull 3 out of the fit; reinstate 3 takes it in again
            """),
    OVERRIDE("L", "override the knock and limit blocks of the pull", "override lift", """
            override 3 reason OVERRIDE the knock and limit blocks from pull 3; your reason goes on the sheet
            """),
    NOTE("T", "note on the pull, or on the session", "note", """
            note text         keep a remark; note 3 text keeps it with pull 3
            """),
    LIMIT("M", "change a limit of the plan", "limit", """
            limit exhaust_c 900  change a limit of the plan from now on
            """),
    UNWATCHED("W", "watch yourself what no channel watches", "unwatched", """
            unwatched         say that you watch what no channel does; unwatched exhaust names the limit
            """),
    FITTED("F", "parts or fuel changed", "next", """
            next label name   say which parts are on before their first pull; next fuel name likewise
            """);

    private final String key;
    private final String what;
    private final String words;
    private final String help;

    HandAct(String key, String what, String words, String help) {
        this.key = key;
        this.what = what;
        this.words = words;
        this.help = help;
    }

    /** The key that asks for it in the window. */
    public String key() {
        return key;
    }

    /** What the key does, in a few words. */
    public String what() {
        return what;
    }

    /** What can be typed and what it does: a line with its end, or none. */
    public String help() {
        return help;
    }

    /** Whether it is about the pull to come, so that there is none of it in a replay. */
    public boolean isAhead() {
        return this == SETTING || this == FITTED;
    }

    /** What a typed word asks for, in small letters. */
    public static Optional<HandAct> of(String word) {
        return Stream.of(values())
                .filter(act -> List.of(act.words.split(" ")).contains(word))
                .findFirst();
    }
}
