package org.nextpull.cli;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A log as {@code compare} takes it: {@code LABEL=LOG}, or a log alone.
 *
 * @param label the label, where one is given
 * @param log file, folder or glob
 */
record LabelledLog(Optional<String> label, String log) {
    static LabelledLog parse(String argument) {
        int equals = argument.indexOf('=');
        boolean labelled = equals > 0
                && argument.substring(0, equals).chars().noneMatch(letter -> letter == '/' || letter == '\\')
                && !exists(argument);
        return labelled
                ? new LabelledLog(Optional.of(argument.substring(0, equals).strip()), argument.substring(equals + 1))
                : new LabelledLog(Optional.empty(), argument);
    }

    private static boolean exists(String name) {
        try {
            return Files.exists(Path.of(name));
        } catch (InvalidPathException odd) {
            return false;
        }
    }
}
