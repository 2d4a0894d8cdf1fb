package org.nextpull.intake.folder;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/**
 * A folder to be watched.
 *
 * @param folder the folder
 * @param steadyMs how long a file that grew in our sight must stay as it is until it counts as complete, in ms; less where it grew in
 *     shorter steps
 */
public record FolderSettings(Path folder, long steadyMs) {
    public static final long USUAL_STEADY_MS = 2000;

    private static final List<String> ENDINGS = List.of(".csv", ".tsv", ".txt", ".log", ".asc", ".dat", ".tab");

    private static final List<String> PASSING = List.of(".tmp", ".temp", ".part", ".lock", ".bak", "~");

    public static FolderSettings usual(Path folder) {
        return new FolderSettings(folder, USUAL_STEADY_MS);
    }

    /** Whether a name is that of a file that somebody may take for a log: not a log, nor what programs write for a moment. */
    static boolean isStranger(String name) {
        String small = name.toLowerCase(Locale.ROOT);
        return !isLog(name)
                && !small.startsWith(".")
                && !small.startsWith("~")
                && PASSING.stream().noneMatch(small::endsWith);
    }

    /** Whether a name is that of a log. Hidden files and what programs call their unfinished and lock files are none. */
    public static boolean isLog(String name) {
        String small = name.toLowerCase(Locale.ROOT);
        return !small.startsWith(".")
                && !small.startsWith("~")
                && ENDINGS.stream().anyMatch(small::endsWith);
    }
}
