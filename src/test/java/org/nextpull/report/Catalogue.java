package org.nextpull.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.nextpull.finding.FindingCode;

/** The catalogue of sentences and the sources that raise findings, read as text. */
final class Catalogue {
    static final Path FILE = Path.of("src/main/resources/org/nextpull/report/findings.properties");
    static final Pattern SLOT = Pattern.compile("\\{([a-z0-9_]+)(?::([a-z0-9_-]+))?}");
    private static final Pattern RAISED =
            Pattern.compile("\\b(note|warning|error|conflict)\\(\\s*(?:FindingCode\\.)?([A-Z][A-Z_0-9]*)\\b");
    private static final Path MAIN = Path.of("src/main/java/org/nextpull");
    private static final Path CODES = MAIN.resolve("finding/FindingCode.java");

    private Catalogue() {}

    /** Key and sentence of each line, in the order of the file; a key that stands there twice shows up as two entries. */
    static List<Map.Entry<String, String>> lines() {
        return read(FILE)
                .lines()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .map(line -> {
                    int equals = line.indexOf('=');
                    return Map.entry(line.substring(0, equals), line.substring(equals + 1));
                })
                .toList();
    }

    static Map<String, String> sentences() {
        Map<String, String> sentences = new LinkedHashMap<>();
        lines().forEach(line -> sentences.put(line.getKey(), line.getValue()));
        return sentences;
    }

    /** The code that a key belongs to: the part before {@code .without-}. */
    static String codeOf(String key) {
        return key.replaceFirst("\\.without-.*", "");
    }

    /** What the Javadoc of a code says, on one line. */
    static Optional<String> javadoc(FindingCode code) {
        Matcher found = Pattern.compile("/\\*\\*((?:(?!\\*/).)*)\\*/\\s*" + code.name() + "\\b", Pattern.DOTALL)
                .matcher(read(CODES));
        return found.find()
                ? Optional.of(found.group(1)
                        .replaceAll("\\s*\\n\\s*\\*\\s*", " ")
                        .replaceAll("^.*/\\*\\*", "")
                        .trim())
                : Optional.empty();
    }

    /** The comments that head the groups of codes, each with its codes, in the order of the source. */
    static Map<String, List<FindingCode>> groups() {
        Map<String, List<FindingCode>> groups = new LinkedHashMap<>();
        String group = "";
        for (String line : read(CODES).lines().toList()) {
            Matcher code = Pattern.compile("^    ([A-Z][A-Z_0-9]*)[,;]$").matcher(line);
            if (line.startsWith("    // ")) {
                group = line.substring(7);
                groups.put(group, List.of());
            } else if (code.matches()) {
                groups.merge(
                        group,
                        List.of(FindingCode.valueOf(code.group(1))),
                        (before, one) ->
                                Stream.concat(before.stream(), one.stream()).toList());
            }
        }
        return groups;
    }

    /** How severe each code is where it is raised; several words where it depends, none where a variable carries the code. */
    static Map<String, String> severities() {
        Matcher raised = RAISED.matcher(sources());
        Map<String, String> severities = new HashMap<>();
        while (raised.find()) {
            severities.merge(
                    raised.group(2),
                    raised.group(1).replace("conflict", "error"),
                    (before, one) -> Stream.concat(Stream.of(before.split(" or ")), Stream.of(one))
                            .distinct()
                            .sorted()
                            .collect(Collectors.joining(" or ")));
        }
        return severities;
    }

    /** The text of every main source outside of this room. */
    static String sources() {
        try (Stream<Path> files = Files.walk(MAIN)) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .filter(file -> !file.startsWith(MAIN.resolve("report")))
                    .sorted()
                    .map(Catalogue::read)
                    .collect(Collectors.joining("\n"));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
