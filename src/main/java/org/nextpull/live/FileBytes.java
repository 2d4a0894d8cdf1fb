package org.nextpull.live;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.nextpull.intake.ByteSource;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.Chunk;
import org.nextpull.intake.wire.Fingerprint;

/**
 * The bytes of the files of a folder as they arrived, so that a file is read as it was captured even when it has been written over since.
 * Only the latest are held; of an earlier one, or one that is too long, the file itself is read when its content is still the same.
 */
final class FileBytes {
    private static final int USUAL_MOST_BYTES = 64 << 20;
    /** Growing and handing out a file takes a few times its bytes for a while, and the session needs room beside it. */
    private static final int SHARE_OF_MEMORY = 16;

    private static final int BUFFER_BYTES = 1 << 16;

    private final Path folder;
    private final int mostBytes;
    private final Map<String, ByteArrayOutputStream> held = new LinkedHashMap<>(16, 0.75f, true);
    private Optional<String> current = Optional.empty();
    private long total;

    FileBytes(Path folder, int mostBytes) {
        this.folder = folder;
        this.mostBytes = mostBytes;
    }

    /**
     * How many bytes are usually held.
     *
     * @param memoryBytes most memory that the program may use
     */
    static int usualMostBytes(long memoryBytes) {
        return (int) Math.min(USUAL_MOST_BYTES, memoryBytes / SHARE_OF_MEMORY);
    }

    void see(Arrival arrival) {
        if (arrival instanceof Arrival.FromFile from) {
            begin(from);
        } else if (arrival instanceof Chunk chunk) {
            current.flatMap(file -> Optional.ofNullable(held.get(file))).ifPresent(bytes -> {
                bytes.writeBytes(chunk.toArray());
                total += chunk.length();
                makeRoom();
            });
        }
    }

    private void begin(Arrival.FromFile from) {
        current = Optional.of(from.file());
        if (from.atByte() == 0) {
            drop(from.file());
            held.put(from.file(), new ByteArrayOutputStream());
        } else if (held.containsKey(from.file()) && held.get(from.file()).size() != from.atByte()) {
            drop(from.file());
        }
    }

    private void drop(String file) {
        ByteArrayOutputStream bytes = held.remove(file);
        total -= bytes == null ? 0 : bytes.size();
    }

    private void makeRoom() {
        while (total > mostBytes && !held.isEmpty()) {
            drop(held.keySet().iterator().next());
        }
    }

    /** The bytes of a file that is complete; empty when they are not to be had any more. */
    Optional<ByteSource> of(Arrival.FileComplete file) throws IOException {
        String name = file.file();
        ByteArrayOutputStream bytes = held.get(name);
        if (bytes != null && bytes.size() == file.print().length()) {
            return Optional.of(new Bytes(name, bytes.toByteArray()));
        }
        Path path = folder.resolve(name);
        return Files.isRegularFile(path) && print(path).equals(file.print())
                ? Optional.of(new OnDisk(name, path))
                : Optional.empty();
    }

    private static Fingerprint print(Path path) throws IOException {
        MessageDigest digest = Fingerprint.digest();
        byte[] buffer = new byte[BUFFER_BYTES];
        long length = 0;
        try (InputStream in = Files.newInputStream(path)) {
            for (int count = in.read(buffer); count >= 0; count = in.read(buffer)) {
                digest.update(buffer, 0, count);
                length += count;
            }
        }
        return Fingerprint.of(length, digest);
    }

    private static final class Bytes implements ByteSource {
        private final String name;
        private final byte[] bytes;

        Bytes(String name, byte[] bytes) {
            this.name = name;
            this.bytes = bytes;
        }

        @Override
        public String name() {
            return name;
        }

        @Override
        public InputStream open() {
            return new ByteArrayInputStream(bytes);
        }
    }

    private record OnDisk(String name, Path path) implements ByteSource {
        @Override
        public InputStream open() throws IOException {
            return Files.newInputStream(path);
        }
    }
}
