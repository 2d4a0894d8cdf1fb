package org.nextpull.intake.folder;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** The files of a folder with their stamps, by name; without those that cannot be looked at. */
final class FolderListing {
    private FolderListing() {}

    /**
     * Looks once.
     *
     * @param wanted which names
     */
    static Map<String, Stamp> of(Path folder, Predicate<String> wanted) throws IOException {
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
