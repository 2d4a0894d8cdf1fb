package org.nextpull.plan.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableMap;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.tomlj.TomlArray;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/** Takes parsed TOML apart into a draft, and gives each comment the line that it speaks of. */
final class DraftReader {
    private final TomlTable top;
    private final NavigableMap<Integer, List<String>> above = new TreeMap<>();
    private final NavigableMap<Integer, String> beside = new TreeMap<>();

    private DraftReader(TomlTable top) {
        this.top = top;
    }

    /** A table with the line of its header. */
    private record Found(DraftTable table, int line) {}

    static PlanDraft read(TomlTable top, String text) {
        DraftReader reader = new DraftReader(top);
        List<String> below = reader.placeComments(Comments.of(text));
        List<DraftTable> tables = reader.found().stream()
                .sorted(Comparator.comparingInt(Found::line))
                .map(Found::table)
                .sorted(PlanDraft.topFirst())
                .collect(Collectors.toCollection(ArrayList::new));
        return new PlanDraft(tables, below);
    }

    /** A comment beside a key or header belongs to it, any other to the next one; those after the last are given back. */
    private List<String> placeComments(List<Comments.Comment> comments) {
        NavigableSet<Integer> lines = new TreeSet<>();
        lines(top, lines);
        List<String> below = new ArrayList<>();
        for (Comments.Comment comment : comments) {
            Integer next = lines.higher(comment.line());
            if (!comment.isAlone() && lines.contains(comment.line())) {
                beside.put(comment.line(), comment.text());
            } else if (next == null) {
                below.add(comment.text());
            } else {
                above.computeIfAbsent(next, line -> new ArrayList<>()).add(comment.text());
            }
        }
        return below;
    }

    /** Lines that keep comments: those of headers and of the keys right below them. */
    private static void lines(TomlTable top, NavigableSet<Integer> lines) {
        for (String key : top.keySet()) {
            Object value = value(top, key);
            line(top, key).ifPresent(lines::add);
            if (value instanceof TomlTable table) {
                keyLines(table, lines);
            } else if (value instanceof TomlArray array && holdsTables(array)) {
                for (int index = 0; index < array.size(); index++) {
                    lines.add(array.inputPositionOf(index).line());
                    keyLines(array.getTable(index), lines);
                }
            }
        }
    }

    private static void keyLines(TomlTable table, NavigableSet<Integer> lines) {
        table.keySet().forEach(key -> line(table, key).ifPresent(lines::add));
    }

    private List<Found> found() {
        List<Found> found = new ArrayList<>();
        List<String> loose = new ArrayList<>();
        for (String key : top.keySet()) {
            Object value = value(top, key);
            int line = line(top, key).orElse(0);
            if (value instanceof TomlTable table && isBare(key)) {
                found.add(new Found(table(key, table, line), line));
            } else if (value instanceof TomlArray array && holdsTables(array) && isBare(key)) {
                IntStream.range(0, array.size()).forEach(index -> {
                    int at = array.inputPositionOf(index).line();
                    found.add(new Found(table(key + "[" + (index + 1) + "]", array.getTable(index), at), at));
                });
            } else {
                loose.add(key);
            }
        }
        if (!loose.isEmpty()) {
            found.add(new Found(new DraftTable("", DraftTable.Notes.none(), keys(top, loose)), 0));
        }
        return found;
    }

    private static boolean isBare(String key) {
        return Shown.key(key).equals(key);
    }

    private DraftTable table(String name, TomlTable table, int line) {
        return new DraftTable(name, notes(line), keys(table, table.keySet()));
    }

    private List<DraftTable.Line> keys(TomlTable table, Iterable<String> keys) {
        List<String> sorted = new ArrayList<>();
        keys.forEach(sorted::add);
        sorted.sort(Comparator.comparingInt(key -> line(table, key).orElse(0)));
        List<DraftTable.Line> lines = new ArrayList<>();
        for (String key : sorted) {
            lines.add(new DraftTable.Line(
                    key,
                    TomlValue.written(value(table, key)),
                    line(table, key).map(this::notes).orElse(DraftTable.Notes.none())));
        }
        return lines;
    }

    /** Each comment is handed out once, should two keys share a line. */
    private DraftTable.Notes notes(int line) {
        List<String> before = above.remove(line);
        String at = beside.remove(line);
        return new DraftTable.Notes(before == null ? List.of() : before, at == null ? "" : at);
    }

    private static Object value(TomlTable table, String key) {
        Object value = table.get(List.of(key));
        if (value == null) {
            throw new IllegalStateException("a key without a value: " + key);
        }
        return value;
    }

    private static Optional<Integer> line(TomlTable table, String key) {
        return Optional.ofNullable(table.inputPositionOf(List.of(key))).map(TomlPosition::line);
    }

    private static boolean holdsTables(TomlArray array) {
        return !array.isEmpty()
                && IntStream.range(0, array.size()).allMatch(index -> array.get(index) instanceof TomlTable);
    }
}
