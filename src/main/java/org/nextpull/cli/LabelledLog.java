package org.nextpull.cli;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A log as {@code compare} takes it: {@code LABEL=LOG}, or a log alone; in place of a log {@code session:ID}, a session of the notebook.
 *
 * @param label the label, where one is given
 * @param log file, folder, glob or session
 */
record LabelledLog(Optional<String> label, String log) {
    private static final Pattern SESSION = Pattern.compile("session:([0-9]{1,18})");

    static LabelledLog parse(String argument) {
        int equals = argument.indexOf('=');
        boolean labelled = equals > 0
                && argument.substring(0, equals).chars().noneMatch(letter -> letter == '/' || letter == '\\')
                && !exists(argument);
        return labelled
                ? new LabelledLog(Optional.of(argument.substring(0, equals).strip()), argument.substring(equals + 1))
                : new LabelledLog(Optional.empty(), argument);
    }

    /** Number of the session, when it names one and not a file of that name. */
    Optional<Long> session() {
        Matcher matcher = SESSION.matcher(log);
        return matcher.matches() && !exists(log) ? Optional.of(Long.valueOf(matcher.group(1))) : Optional.empty();
    }

    private static boolean exists(String name) {
        try {
            return Files.exists(Path.of(name));
        } catch (InvalidPathException odd) {
            return false;
        }
    }
}
