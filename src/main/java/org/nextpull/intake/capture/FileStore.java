package org.nextpull.intake.capture;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;

/** A capture file on disk. It is locked against a second session, as far as its file system knows locks. */
final class FileStore implements CaptureWriter.Store {
    private final Path file;
    private final FileChannel channel;

    private FileStore(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /**
     * Opens a file at its end, making it and its folder where they do not exist.
     *
     * @param newId id of the file's records, if it has none yet
     */
    static Opened open(Path file, int newId) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        if (folder != null) {
            Files.createDirectories(folder);
        }
        FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        try {
            lock(file, channel);
            OptionalInt id = channel.size() == 0
                    ? OptionalInt.empty()
                    : CaptureSummary.of(file).fileId();
            channel.position(channel.size());
            return new Opened(new FileStore(file, channel), id.orElse(newId));
        } catch (IOException e) {
            channel.close();
            throw e;
        }
    }

    private static void lock(Path file, FileChannel channel) throws IOException {
        @Nullable FileLock lock;
        try {
            lock = channel.tryLock();
        } catch (OverlappingFileLockException e) {
            lock = null;
        } catch (IOException e) {
            // a network share without locks: nothing to hold it by
            return;
        }
        if (lock == null) {
            throw new FileSystemException(file.toString(), null, "another session writes to it");
        }
    }

    @Override
    public void append(ByteBuffer bytes) throws IOException {
        long whole = channel.position();
        try {
            while (bytes.hasRemaining()) {
                channel.write(bytes);
            }
        } catch (IOException e) {
            cutBack(whole, e);
            throw e;
        }
    }

    /** A record of which only part was written would be damage to step over; better that it is not there. */
    private void cutBack(long whole, IOException cause) {
        try {
            channel.truncate(whole);
        } catch (IOException e) {
            cause.addSuppressed(e);
        }
    }

    @Override
    public void force() throws IOException {
        channel.force(false);
    }

    @Override
    public boolean isThere() {
        return Files.exists(file);
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
