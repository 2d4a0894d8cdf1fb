package org.nextpull.intake.folder;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;

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
                attributes.size(), attributes.lastModifiedTime().toMillis(), Optional.ofNullable(attributes.fileKey()));
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
            // renamed or deleted since the folder was listed, or a link to itself: no reason to leave out the others
            result.remove(name);
        }
    }
}
