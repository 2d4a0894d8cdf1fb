package org.nextpull.live;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The right to write into the folder of a session, held as long as the session runs: two programs that keep one session would spoil each
 * other's captures. It is a lock of the operating system, so it ends with the program however that ends.
 */
public final class SessionClaim implements AutoCloseable {
    private static final String NAME = "running.lock";

    private final Path folder;
    private final @Nullable FileChannel channel;

    private final Runnable whenFree;

    private SessionClaim(Path folder, @Nullable FileChannel channel, Runnable whenFree) {
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
    public static Optional<SessionClaim> of(Path folder) {
        return of(folder, () -> {});
    }

    /** The same; {@code whenFree} runs once the claim is given back. */
    static Optional<SessionClaim> of(Path folder, Runnable whenFree) {
        try {
            Files.createDirectories(folder);
            FileChannel channel =
                    FileChannel.open(folder.resolve(NAME), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            if (isLocked(channel)) {
                return Optional.of(new SessionClaim(folder, channel, whenFree));
            }
            channel.close();
            return Optional.empty();
        } catch (IOException unwritable) {
            return Optional.of(new SessionClaim(folder, null, whenFree));
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
