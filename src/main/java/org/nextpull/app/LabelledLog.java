package org.nextpull.app;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What somebody names as a part of a day: a log, or in place of a log {@code session:ID}, a session of the notebook; with a label or without.
 *
 * @param label the label for its pulls; empty leaves that to the pulls
 * @param log file, folder, glob or session
 */
public record LabelledLog(Optional<String> label, String log) {
    private static final Pattern SESSION = Pattern.compile("session:([0-9]{1,18})");

    public LabelledLog {
        label = label.map(String::strip).filter(text -> !text.isEmpty());
        log = log.strip();
    }

    /** A log under its own labels. */
    public static LabelledLog unlabelled(String log) {
        return new LabelledLog(Optional.empty(), log);
    }

    /** A session of the notebook under its own labels. */
    public static LabelledLog ofSession(long id) {
        return unlabelled("session:" + id);
    }

    /** As a command line writes it: {@code LABEL=LOG}, or a log alone. */
    public static LabelledLog parse(String argument) {
        int equals = argument.indexOf('=');
        boolean labelled = equals > 0
                && argument.substring(0, equals).chars().noneMatch(letter -> letter == '/' || letter == '\\')
                && !exists(argument);
        return labelled
                ? new LabelledLog(Optional.of(argument.substring(0, equals)), argument.substring(equals + 1))
                : unlabelled(argument);
    }

    /** Number of the session, when it names one and not a file of that name. */
    public Optional<Long> session() {
        Matcher matcher = SESSION.matcher(log);
        return matcher.matches() && !exists(log) ? Optional.of(Long.valueOf(matcher.group(1))) : Optional.empty();
    }

    /** As a list shows it. */
    public String shown() {
        return label.map(text -> text + " = " + log).orElse(log);
    }

    private static boolean exists(String name) {
        try {
            return Files.exists(Path.of(name));
        } catch (InvalidPathException odd) {
            return false;
        }
    }
}
