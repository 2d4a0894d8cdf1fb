package org.nextpull.intake;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;

/** Finds the files that a user means by files, folders and globs. A name that leads nowhere does not spoil the others. */
public final class SourceFinder {
    private static final List<String> LOG_ENDINGS =
            List.of(".csv", ".tsv", ".txt", ".log", ".asc", ".dat", ".tab", ".gz", ".zip");
    private static final String GLOB_SIGNS = "*?[{";
    private static final int DEEPEST_GLOB = 12;

    /** Far more than the logs of a day; each one that is read looks through the list of the whole zip again. */
    private static final int MOST_PACKED = 500;

    private final Comparator<Path> order = Comparator.comparing(Path::toString, new NaturalOrder());
    private final List<ByteSource> sources = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private final Set<Path> taken = new LinkedHashSet<>();

    private SourceFinder() {}

    /**
     * Finds the sources behind names.
     *
     * @param arguments files, folders and globs, relative to the working directory or absolute
     * @return what was found, and what was not
     */
    public static Found find(List<String> arguments) {
        SourceFinder finder = new SourceFinder();
        arguments.forEach(finder::argument);
        return new Found(finder.sources, finder.findings, List.copyOf(finder.taken));
    }

    private void argument(String argument) {
        Path path;
        try {
            path = Path.of(argument);
        } catch (InvalidPathException e) {
            path = null;
        }
        if (path != null && Files.isDirectory(path)) {
            folder(path);
        } else if (path != null && Files.exists(path)) {
            file(path);
        } else if (argument.chars().anyMatch(c -> GLOB_SIGNS.indexOf(c) >= 0)) {
            glob(argument);
        } else {
            findings.add(Finding.error(FindingCode.FILE_NOT_FOUND, Place.inFile(argument)));
        }
    }

    private void folder(Path folder) {
        List<Path> files;
        try (Stream<Path> entries = Files.list(folder)) {
            files = entries.filter(SourceFinder::isVisibleFile).sorted(order).toList();
        } catch (IOException e) {
            unreadable(folder.toString());
            return;
        }
        List<Path> logs =
                files.stream().filter(file -> looksLikeLog(file.toString())).toList();
        chosenFrom(folder.toString(), files.size(), logs.size());
        logs.forEach(this::file);
    }

    private void chosenFrom(String container, int all, int chosen) {
        if (chosen == 0) {
            findings.add(Finding.error(FindingCode.FOLDER_WITHOUT_LOGS, Place.inFile(container)));
        } else if (chosen < all) {
            findings.add(Finding.note(
                    FindingCode.FOLDER_FILES_PASSED_OVER, Place.inFile(container), Detail.of("count", all - chosen)));
        }
    }

    private void glob(String glob) {
        String slashed = glob.replace('\\', '/');
        int sign =
                (int) slashed.chars().takeWhile(c -> GLOB_SIGNS.indexOf(c) < 0).count();
        int slash = slashed.lastIndexOf('/', sign);
        Path base = Path.of(slash < 0 ? "" : slashed.substring(0, Math.max(slash, 1)));
        String pattern = slashed.substring(slash + 1);
        List<Path> matches;
        try (Stream<Path> entries = Files.walk(base, DEEPEST_GLOB)) {
            PathMatcher matcher = FileSystems.getDefault().getPathMatcher("glob:" + pattern);
            matches = entries.filter(SourceFinder::isVisibleFile)
                    .filter(path -> matcher.matches(base.relativize(path)))
                    .sorted(order)
                    .toList();
        } catch (IOException | IllegalArgumentException e) {
            matches = List.of();
        }
        if (matches.isEmpty()) {
            findings.add(Finding.error(FindingCode.FILE_NOT_FOUND, Place.inFile(glob)));
        }
        matches.forEach(this::file);
    }

    private void file(Path path) {
        if (!Files.isRegularFile(path)) {
            // opening a pipe that nobody writes into would wait for ever
            findings.add(Finding.error(FindingCode.FILE_IS_NO_FILE, Place.inFile(path.toString())));
            return;
        }
        try {
            if (!taken.add(path.toRealPath())) {
                findings.add(Finding.note(FindingCode.FILE_NAMED_TWICE, Place.inFile(path.toString())));
                return;
            }
            List<ByteSource> inside = Unpacking.sources(path);
            List<ByteSource> logs = inside.stream()
                    .filter(source -> looksLikeLog(source.name()))
                    .toList();
            List<ByteSource> chosen = logs.isEmpty() ? inside : logs;
            if (chosen.size() > MOST_PACKED) {
                findings.add(Finding.error(
                        FindingCode.ZIP_WITH_TOO_MANY_LOGS,
                        Place.inFile(path.toString()),
                        Detail.of("count", chosen.size()),
                        Detail.of("most", MOST_PACKED)));
                return;
            }
            chosenFrom(path.toString(), inside.size(), chosen.size());
            sources.addAll(chosen);
        } catch (IOException e) {
            unreadable(path.toString());
        }
    }

    private void unreadable(String name) {
        findings.add(Finding.error(FindingCode.FILE_UNREADABLE, Place.inFile(name)));
    }

    private static boolean isVisibleFile(Path path) {
        return Files.isRegularFile(path) && !path.getFileName().toString().startsWith(".");
    }

    private static boolean looksLikeLog(String path) {
        String name = path.toLowerCase(Locale.ROOT);
        return LOG_ENDINGS.stream().anyMatch(name::endsWith);
    }

    /**
     * Byte sources found from the names that a user gave.
     *
     * @param sources in a stable order: that of the arguments, and natural order within a folder, a glob or a zip
     * @param findings names that led nowhere, and files that were passed over
     * @param files the files that the sources are read from
     */
    public record Found(List<ByteSource> sources, List<Finding> findings, List<Path> files) {
        public Found {
            sources = List.copyOf(sources);
            findings = List.copyOf(findings);
            files = List.copyOf(files);
        }
    }
}
