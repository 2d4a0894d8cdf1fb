package org.nextpull.app;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;

/**
 * Files that are written together: one by the name that somebody gave, the others beside it under names that follow from that one.
 *
 * @param named the one that was named
 * @param beside the others
 */
public record WrittenFiles(Path named, List<Path> beside) {
    public WrittenFiles {
        beside = List.copyOf(beside);
    }

    public static WrittenFiles of(Path named) {
        return new WrittenFiles(named, List.of());
    }

    /**
     * Why none of them may be written: one was read, or one of those beside is there without the named one, so that it is somebody's
     * own, which nobody said may be replaced. To be asked before the first is written.
     *
     * @param read the files that the figures come from
     */
    public Optional<Finding> refusal(List<Path> read) throws IOException {
        List<Path> all = new ArrayList<>(List.of(named));
        all.addAll(beside);
        for (Path file : all) {
            if (isOneOf(read, file)) {
                return Optional.of(Finding.error(FindingCode.INPUT_NOT_WRITTEN_OVER, Place.inFile(file.toString())));
            }
        }
        return Files.exists(named)
                ? Optional.empty()
                : beside.stream()
                        .filter(Files::exists)
                        .findFirst()
                        .map(file -> Finding.error(
                                FindingCode.FILE_OF_ANOTHER,
                                Place.inFile(file.toString()),
                                Detail.of("named", named.toString())));
    }

    /** What is to stand in a file. */
    public interface Content {
        void writeTo(OutputStream out) throws IOException;

        static Content of(String text) {
            return out -> out.write(text.getBytes(StandardCharsets.UTF_8));
        }
    }

    /**
     * Writes files whole or not at all: each is complete beside its place before the first takes its place, so that a full disk leaves what was
     * there. A link stays a link.
     *
     * @throws FileSystemException where a folder, a pipe or a device has the name: whoever writes into a pipe that nobody reads waits for ever
     */
    public static void write(Map<Path, Content> contents) throws IOException {
        Map<Path, Path> parts = new LinkedHashMap<>();
        try {
            for (Map.Entry<Path, Content> each : contents.entrySet()) {
                Path target = place(each.getKey());
                Path part = target.resolveSibling("." + target.getFileName() + ".part");
                part.toFile().deleteOnExit();
                parts.put(part, target);
                try (OutputStream out = Files.newOutputStream(part)) {
                    each.getValue().writeTo(out);
                }
            }
            for (Map.Entry<Path, Path> part : parts.entrySet()) {
                Files.move(
                        part.getKey(),
                        part.getValue(),
                        StandardCopyOption.REPLACE_EXISTING,
                        StandardCopyOption.ATOMIC_MOVE);
            }
        } finally {
            for (Path part : parts.keySet()) {
                Files.deleteIfExists(part);
            }
        }
    }

    private static Path place(Path file) throws IOException {
        if (Files.isDirectory(file)) {
            throw new FileSystemException(file.toString(), null, "it is a folder");
        }
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            throw new FileSystemException(file.toString(), null, "it is a pipe or a device, not a file");
        }
        return Files.exists(file) ? file.toRealPath() : file;
    }

    /** That nothing could be written there, and why, in words. */
    public static Finding notWritable(String name, Exception fault) {
        String why;
        if (fault instanceof NoSuchFileException) {
            why = "there is no such folder";
        } else if (fault instanceof AccessDeniedException) {
            why = "it may not be written to";
        } else if (fault instanceof FileAlreadyExistsException) {
            why = "a file of that name is in the way";
        } else if (fault instanceof FileSystemException told && told.getReason() != null) {
            why = told.getReason();
        } else {
            why = String.valueOf(fault.getMessage());
        }
        return Finding.error(FindingCode.FOLDER_NOT_WRITABLE, Place.inFile(name), Detail.of("why", why));
    }

    /** Also through links: one file may go by several names. */
    private static boolean isOneOf(List<Path> read, Path file) throws IOException {
        if (!Files.exists(file)) {
            return false;
        }
        for (Path one : read) {
            if (Files.exists(one) && Files.isSameFile(one, file)) {
                return true;
            }
        }
        return false;
    }
}
