package org.nextpull.window.compared;

import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Something that is compared.
 *
 * @param label its label; blank leaves that to its pulls
 * @param what a log, a folder of logs, or {@code session:3}
 */
public record Contender(String label, String what) {
    private static final Pattern SESSION = Pattern.compile("session:([0-9]{1,18})");

    public Contender {
        label = label.strip();
        what = what.strip();
    }

    /** A session of the notebook under its own labels. */
    public static Contender ofSession(long id) {
        return new Contender("", "session:" + id);
    }

    /** Number of the session; empty where it is a log. */
    OptionalLong session() {
        Matcher matcher = SESSION.matcher(what);
        return matcher.matches() ? OptionalLong.of(Long.parseLong(matcher.group(1))) : OptionalLong.empty();
    }

    /** As the list shows it. */
    String shown() {
        return label.isEmpty() ? what : label + " = " + what;
    }
}
