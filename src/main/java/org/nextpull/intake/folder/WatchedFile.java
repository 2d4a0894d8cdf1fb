package org.nextpull.intake.folder;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.security.MessageDigest;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.Fingerprint;

/** What is known of one file of the folder. */
final class WatchedFile {
    private static final int GROWTHS_TO_FOLLOW = 2;

    /** A file that was put there whole is complete so soon, ms. */
    private static final long SOON_MS = 250;

    /** One that grew in steps of a quarter of that, or does not end with a line, is complete so soon, ms. */
    private static final long LATER_MS = 500;

    /** A pause of so many of the longest pauses before is the end. */
    private static final int PAUSES = 4;

    private static final long NS_A_MS = 1_000_000;

    private String name;
    private Stamp stamp;
    private long steadySinceNs;
    private int growths;
    private long longestPauseNs;
    private boolean following;
    private boolean done;
    private boolean held;
    private long sent;
    private MessageDigest digest = Fingerprint.digest();
    private Optional<Fingerprint> taken = Optional.empty();
    private Arrival.Taken kind = Arrival.Taken.NEW;

    WatchedFile(String name, Stamp stamp, long nowNs) {
        this.name = name;
        this.stamp = stamp;
        this.steadySinceNs = nowNs;
    }

    String name() {
        return name;
    }

    Stamp stamp() {
        return stamp;
    }

    void rename(String newName) {
        name = newName;
    }

    /** Notes what the folder says now; true when it has changed. */
    boolean see(Stamp now, long nowNs) {
        if (now.equals(stamp)) {
            return false;
        }
        if (now.size() > stamp.size()) {
            longestPauseNs = growths > 0 ? Math.max(longestPauseNs, nowNs - steadySinceNs) : 0;
            growths++;
            following |= !done && growths >= GROWTHS_TO_FOLLOW;
        }
        stamp = now;
        steadySinceNs = nowNs;
        return true;
    }

    /**
     * Whether it has stood still for longer than its own pauses explain, after {@code mostMs} at the latest.
     *
     * @param whole whether it ends with the end of a line: what is written in parts seldom does
     */
    boolean isSteady(long nowNs, long mostMs, boolean whole) {
        long leastMs = whole && growths == 0 ? SOON_MS : LATER_MS;
        long ownNs = Math.max(leastMs * NS_A_MS, PAUSES * longestPauseNs);
        return nowNs - steadySinceNs >= Math.min(mostMs * NS_A_MS, ownNs);
    }

    /** Whether it grows before our eyes, so that its bytes are sent as they come. */
    boolean isFollowed() {
        return following && !done;
    }

    boolean isDone() {
        return done;
    }

    /** Bytes that were sent. */
    long sent() {
        return sent;
    }

    void sent(byte[] buffer, int length) {
        digest.update(buffer, 0, length);
        sent += length;
    }

    Fingerprint sentPrint() {
        return Fingerprint.of(sent, digest);
    }

    Arrival.Taken kind() {
        return kind;
    }

    Optional<Fingerprint> taken() {
        return taken;
    }

    /** It is complete and was taken. */
    void done(Fingerprint print) {
        passedOver(print.length());
        taken = Optional.of(print);
    }

    /** So much of it is no part of the session; its content is not known. */
    void passedOver(long size) {
        done = true;
        following = false;
        growths = 0;
        taken = Optional.empty();
        sent = size;
    }

    /** Bytes were added after it was done. */
    void goOn(MessageDigest before) {
        done = false;
        following = true;
        kind = Arrival.Taken.EXTENDED;
        digest = before;
    }

    /** It holds something else than what was sent: from the beginning. */
    void startOver() {
        if (done) {
            kind = Arrival.Taken.REWRITTEN;
        }
        done = false;
        following = false;
        growths = 0;
        sent = 0;
        digest = Fingerprint.digest();
    }

    /** Notes whether it could be read; true when this is to be said: at the first time that it could not. */
    boolean held(boolean now) {
        boolean news = now && !held;
        held = now;
        return news;
    }

    /** The last bytes of a file, which tell whether more is to come. */
    static final class End {
        /** So many zeros at the end are room set aside: a line end in UTF-16 ends with one, in UTF-32 with three. */
        private static final int ROOM_ZEROS = 4;

        private final byte[] bytes;

        private End(byte[] bytes) {
            this.bytes = bytes;
        }

        static End of(Path file, long size) throws IOException {
            byte[] bytes = new byte[(int) Math.min(ROOM_ZEROS, size)];
            try (RandomAccessFile in = new RandomAccessFile(file.toFile(), "r")) {
                in.seek(size - bytes.length);
                in.readFully(bytes);
            }
            return new End(bytes);
        }

        /** Whether it is room that was set aside for lines to come: zeros. */
        boolean isRoom() {
            return Arrays.equals(bytes, new byte[bytes.length]);
        }

        /** In any encoding: what is not zero at the end of a line in UTF-16 or UTF-32 is its last character. */
        boolean isLineEnd() {
            int last = bytes.length - 1;
            while (last > 0 && bytes[last] == 0) {
                last--;
            }
            return bytes[last] == '\n' || bytes[last] == '\r';
        }
    }

    /**
     * What a folder says of a file. Only ever compared with an earlier one: the clock of a network share need not be ours.
     *
     * @param size bytes
     * @param changedMs time of the last change, as the file system has it
     * @param key what stays the same when a file gets another name; empty where the file system has no such thing
     */
    record Stamp(long size, long changedMs, Optional<Object> key) {
        static Stamp of(BasicFileAttributes attributes) {
            return new Stamp(
                    attributes.size(),
                    attributes.lastModifiedTime().toMillis(),
                    Optional.ofNullable(attributes.fileKey()));
        }

        /**
         * Looks once.
         *
         * @param wanted which names
         */
        static Map<String, Stamp> inFolder(Path folder, Predicate<String> wanted) throws IOException {
            Map<String, Stamp> result = new TreeMap<>();
            try (Stream<Path> entries = Files.list(folder)) {
                for (Path path : (Iterable<Path>) entries::iterator) {
                    String name = String.valueOf(path.getFileName());
                    if (wanted.test(name)) {
                        add(name, path, result);
                    }
                }
            } catch (UncheckedIOException e) {
                throw e.getCause();
            }
            return result;
        }

        private static void add(String name, Path path, Map<String, Stamp> result) {
            try {
                BasicFileAttributes attributes = Files.readAttributes(path, BasicFileAttributes.class);
                if (attributes.isRegularFile()) {
                    result.put(name, Stamp.of(attributes));
                }
            } catch (IOException e) {
                // renamed or deleted since the folder was listed, or a link to itself: no reason to leave out the
                // others
                result.remove(name);
            }
        }
    }
}
