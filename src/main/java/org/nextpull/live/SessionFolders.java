package org.nextpull.live;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The folders of the sessions of a notebook, beside its file: each named by the time at which its session began. A program has one of
 * these for a notebook and claims folders through it alone: to try again for a folder that the same program holds would, on some
 * systems, give up the lock on it. Safe for several threads.
 */
public final class SessionFolders {
    private static final DateTimeFormatter NAME =
            DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);

    private static final int MOST_A_SECOND = 1000;

    private final Path folder;
    private final Set<Path> held = new HashSet<>();

    private SessionFolders(Path folder) {
        this.folder = folder;
    }

    /** Those of a notebook: beside {@code shop.db} lies {@code shop-sessions}. */
    public static SessionFolders beside(Path notebook) {
        Path file = notebook.toAbsolutePath();
        String name = String.valueOf(file.getFileName());
        int dot = name.lastIndexOf('.');
        String stem = dot > 0 ? name.substring(0, dot) : name;
        return new SessionFolders(file.resolveSibling(stem + "-sessions"));
    }

    public Path folder() {
        return folder;
    }

    /** The folder for a session that begins now; it is not made here. */
    public Path fresh(Instant now) {
        String name = NAME.format(now);
        Path free = folder.resolve(name);
        for (int count = 2; Files.exists(free) && count < MOST_A_SECOND; count++) {
            free = folder.resolve(name + "-" + count);
        }
        return free;
    }

    /** A folder for a session that begins now, claimed so that no other program that begins in the same second takes it. */
    public SessionClaim claimFresh(Instant now) {
        return Stream.generate(() -> claim(fresh(now)))
                .limit(MOST_A_SECOND)
                .flatMap(Optional::stream)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no folder is free in " + folder));
    }

    /** Claims the folder of a session; empty while another program, or another session of this one, holds it. */
    public synchronized Optional<SessionClaim> claim(Path session) {
        Path place = session.toAbsolutePath().normalize();
        if (held.contains(place)) {
            return Optional.empty();
        }
        Optional<SessionClaim> claim = SessionClaim.of(session, () -> free(place));
        claim.ifPresent(taken -> held.add(place));
        return claim;
    }

    /** Whether some program is at a session now. */
    public boolean isRunning(Path session) {
        if (!Files.isDirectory(session)) {
            return false;
        }
        Optional<SessionClaim> claim = claim(session);
        claim.ifPresent(SessionClaim::close);
        return claim.isEmpty();
    }

    private synchronized void free(Path place) {
        held.remove(place);
    }

    /** The folder of the session that began last; empty when there is none. */
    public Optional<Path> newest() throws IOException {
        if (!Files.isDirectory(folder)) {
            return Optional.empty();
        }
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.filter(Files::isDirectory)
                    .filter(entry -> String.valueOf(entry.getFileName()).matches("\\d{8}T\\d{6}Z(-\\d+)?"))
                    .max(Comparator.comparing((Path entry) -> SessionFolders.began(entry))
                            .thenComparing(SessionFolders::count));
        }
    }

    private static String began(Path folder) {
        String name = String.valueOf(folder.getFileName());
        return name.substring(0, name.indexOf('Z'));
    }

    private static int count(Path folder) {
        String name = String.valueOf(folder.getFileName());
        int dash = name.indexOf('-');
        return dash < 0 ? 1 : Integer.parseInt(name.substring(dash + 1));
    }
}
