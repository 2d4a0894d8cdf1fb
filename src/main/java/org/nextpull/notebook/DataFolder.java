package org.nextpull.notebook;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The folder for the user's data: {@code $XDG_DATA_HOME/nextpull} or {@code ~/.local/share/nextpull} (XDG Base Directory
 * Specification 0.8), {@code ~/Library/Application Support/nextpull} on macOS, {@code %LOCALAPPDATA%\nextpull} on Windows. Not made here.
 */
public final class DataFolder {
    private static final String NAME = "nextpull";

    private DataFolder() {}

    /** The folder of the user who runs the program. */
    public static Path ofUser() {
        return of(System.getenv(), System.getProperty("os.name", ""), Path.of(System.getProperty("user.home", ".")));
    }

    /** The notebook of the user who runs the program, which need not be there. */
    public static Path notebook() {
        return ofUser().resolve("notebook.db");
    }

    static Path of(Map<String, String> environment, String system, Path home) {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("windows")) {
            return absolute(environment, "LOCALAPPDATA")
                    .orElse(home.resolve("AppData").resolve("Local"))
                    .resolve(NAME);
        }
        if (name.startsWith("mac")) {
            return home.resolve("Library").resolve("Application Support").resolve(NAME);
        }
        return absolute(environment, "XDG_DATA_HOME")
                .orElse(home.resolve(".local").resolve("share"))
                .resolve(NAME);
    }

    /** The specification tells programs to ignore a relative path. */
    private static Optional<Path> absolute(Map<String, String> environment, String name) {
        return Optional.ofNullable(environment.get(name))
                .filter(value -> !value.isBlank())
                .map(Path::of)
                .filter(Path::isAbsolute);
    }
}
