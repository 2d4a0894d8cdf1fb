package org.nextpull.live;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

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
    public Claim claimFresh(Instant now) {
        return Stream.generate(() -> claim(fresh(now)))
                .limit(MOST_A_SECOND)
                .flatMap(Optional::stream)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no folder is free in " + folder));
    }

    /** Claims the folder of a session; empty while another program, or another session of this one, holds it. */
    public synchronized Optional<Claim> claim(Path session) {
        Path place = session.toAbsolutePath().normalize();
        if (held.contains(place)) {
            return Optional.empty();
        }
        Optional<Claim> claim = Claim.of(session, () -> free(place));
        claim.ifPresent(taken -> held.add(place));
        return claim;
    }

    /** Whether some program is at a session now. */
    public boolean isRunning(Path session) {
        if (!Files.isDirectory(session)) {
            return false;
        }
        Optional<Claim> claim = claim(session);
        claim.ifPresent(Claim::close);
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

    /**
     * The right to write into the folder of a session, held as long as the session runs: two programs that keep one session would spoil each
     * other's captures. It is a lock of the operating system, so it ends with the program however that ends.
     */
    public static final class Claim implements AutoCloseable {
        private static final String NAME = "running.lock";

        private final Path folder;
        private final @Nullable FileChannel channel;

        private final Runnable whenFree;

        private Claim(Path folder, @Nullable FileChannel channel, Runnable whenFree) {
            this.folder = folder;
            this.channel = channel;
            this.whenFree = whenFree;
        }

        public Path folder() {
            return folder;
        }

        /**
         * Claims a folder, and makes it; empty when another session holds it. A folder that cannot be written is nobody's, and that is said
         * where something is to be kept in it.
         */
        public static Optional<Claim> of(Path folder) {
            return of(folder, () -> {});
        }

        /** The same; {@code whenFree} runs once the claim is given back. */
        static Optional<Claim> of(Path folder, Runnable whenFree) {
            try {
                Files.createDirectories(folder);
                FileChannel channel =
                        FileChannel.open(folder.resolve(NAME), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                if (isLocked(channel)) {
                    return Optional.of(new Claim(folder, channel, whenFree));
                }
                channel.close();
                return Optional.empty();
            } catch (IOException unwritable) {
                return Optional.of(new Claim(folder, null, whenFree));
            }
        }

        private static boolean isLocked(FileChannel channel) throws IOException {
            try {
                return channel.tryLock() != null;
            } catch (OverlappingFileLockException sameProgram) {
                return false;
            }
        }

        @Override
        public void close() {
            try {
                if (channel != null) {
                    channel.close();
                }
            } catch (IOException gone) {
                // the lock goes with the program
                return;
            } finally {
                whenFree.run();
            }
        }
    }
}
