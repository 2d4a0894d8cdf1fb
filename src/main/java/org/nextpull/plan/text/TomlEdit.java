package org.nextpull.plan.text;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.nextpull.plan.text.TomlLines.Extent;
import org.nextpull.plan.text.TomlLines.Statement;
import org.tomlj.Toml;
import org.tomlj.TomlArray;
import org.tomlj.TomlTable;

/**
 * Changes a single key or table in a text that is TOML; every other line, comment and blank line stays as it is. Each change gives
 * the new text.
 */
final class TomlEdit {
    private static final String BELOW = "x";

    private final String text;
    private final String newline;
    private final List<Statement> statements;

    TomlEdit(String text) {
        this.newline = text.contains("\r\n") ? "\r\n" : "\n";
        this.text = text.isEmpty() || text.endsWith("\n") ? text : text + newline;
        this.statements = TomlLines.of(this.text);
    }

    /** The text with a key at a value; its table is made where there is none. */
    String set(String table, String key, String value) {
        List<String> path = with(path(table), key);
        Optional<Statement> own = at(path);
        if (own.isPresent()) {
            return replaced(own.get(), value);
        }
        Optional<Statement> inline = inline(path(table));
        if (inline.isPresent()) {
            return replaced(inline.get(), changed(inline.get(), path, Optional.of(value)));
        }
        if (statements.stream().anyMatch(statement -> statement.isBelow(path))) {
            return new TomlEdit(without(table, key)).set(table, key, value);
        }
        Optional<Statement> before = last(path(table));
        if (before.isEmpty() && table.isEmpty()) {
            return inserted(0, PlanValueText.key(key) + " = " + value + newline);
        }
        if (before.isEmpty()) {
            return new TomlEdit(withTable(table)).set(table, key, value);
        }
        List<String> header = before.get().header();
        String name = path.subList(header.size(), path.size()).stream()
                .map(PlanValueText::key)
                .collect(Collectors.joining("."));
        return inserted(before.get().span().to(), name + " = " + value + newline);
    }

    /** The text without a key. A comment beside it goes too; those in lines of their own stay. */
    String without(String table, String key) {
        List<String> path = with(path(table), key);
        Optional<Statement> inline = at(path).isPresent() ? Optional.empty() : inline(path(table));
        return inline.isPresent()
                ? replaced(inline.get(), changed(inline.get(), path, Optional.empty()))
                : cut(statements.stream()
                        .filter(one -> one.isBelow(path))
                        .map(Statement::span)
                        .toList());
    }

    /** The text with a table that it does not have, in the order of the handbook. */
    String withTable(String table) {
        Optional<Statement> inline = inline(path(table));
        if (inline.isPresent()) {
            return replaced(inline.get(), changed(inline.get(), path(table), Optional.of("{}")));
        }
        String list = PlanDraft.listOf(table);
        String header = (list.equals(table) ? "[" + table + "]" : "[[" + list + "]]") + newline;
        for (Statement other : statements) {
            if (other.isHeader()
                    && (other.isBelow(path(table))
                            || PlanDraft.rank(other.path().get(0)) > PlanDraft.rank(table))) {
                return inserted(aboveComments(other.span().from()), header + newline);
            }
        }
        return text + (text.isEmpty() || text.endsWith(newline + newline) ? "" : newline) + header;
    }

    /** The text without a table, what stands in it and the comments between. */
    String withoutTable(String table) {
        List<String> path = path(table);
        Optional<Statement> inline = inline(path);
        if (inline.isPresent() && !inline.get().isAt(path)) {
            return replaced(inline.get(), changed(inline.get(), path, Optional.empty()));
        }
        List<Extent> gone = new ArrayList<>();
        Extent open = new Extent(0, 0);
        for (Statement one : statements) {
            if (one.isBelow(path)) {
                boolean goesOn = open.to() > 0 && !one.isHeader();
                open = new Extent(
                        goesOn ? open.from() : one.span().from(), one.span().to());
                if (goesOn) {
                    gone.remove(gone.size() - 1);
                }
                gone.add(open);
            } else {
                open = new Extent(0, 0);
            }
        }
        return cut(gone.stream().map(this::withBlanksBelow).toList());
    }

    private static List<String> path(String table) {
        return table.isEmpty() ? List.of() : List.of(table);
    }

    private static List<String> with(List<String> path, String key) {
        List<String> longer = new ArrayList<>(path);
        longer.add(key);
        return longer;
    }

    private Optional<Statement> at(List<String> path) {
        return statements.stream()
                .filter(one -> !one.isHeader() && one.isAt(path))
                .findFirst();
    }

    /** The key whose value is the table, or the list that it is a member of. */
    private Optional<Statement> inline(List<String> table) {
        if (table.isEmpty()) {
            return Optional.empty();
        }
        List<String> list = List.of(PlanDraft.listOf(table.get(0)));
        return at(table).or(() -> at(list));
    }

    /** The last line at which a key of the table can be followed by another. */
    private Optional<Statement> last(List<String> table) {
        List<Statement> own = statements.stream()
                .filter(one -> one.isBelow(table))
                .filter(one -> one.header().equals(table) || one.header().size() < table.size())
                .toList();
        return own.isEmpty() ? Optional.empty() : Optional.of(own.get(own.size() - 1));
    }

    private String replaced(Statement statement, String value) {
        String kept =
                statement.within().stream().map(comment -> comment + newline).collect(Collectors.joining());
        return text.substring(0, statement.span().from())
                + kept
                + text.substring(statement.span().from(), statement.value().from())
                + value
                + text.substring(statement.value().to());
    }

    private String inserted(int place, String lines) {
        return text.substring(0, place) + lines + text.substring(place);
    }

    private String cut(List<Extent> spans) {
        StringBuilder left = new StringBuilder(text);
        List<Extent> fromTheEnd = new ArrayList<>(spans);
        Collections.reverse(fromTheEnd);
        fromTheEnd.forEach(span -> left.delete(span.from(), span.to()));
        return left.toString();
    }

    /** A table takes the blank lines below it along where there are some above it, too. */
    private Extent withBlanksBelow(Extent span) {
        int to = span.to();
        while (to < text.length() && text.substring(to, end(to)).isBlank()) {
            to = end(to);
        }
        return new Extent(span.from(), to);
    }

    private int end(int from) {
        int end = text.indexOf('\n', from);
        return end < 0 ? text.length() : end + 1;
    }

    /** The begin of the comments right above a line. */
    private int aboveComments(int line) {
        int first = line;
        while (first > 0) {
            int before = text.lastIndexOf('\n', first - 2) + 1;
            if (!text.substring(before, first).stripLeading().startsWith("#")) {
                return first;
            }
            first = before;
        }
        return first;
    }

    /** The inline value of a statement with something in it changed, written anew. */
    private String changed(Statement statement, List<String> path, Optional<String> value) {
        String written =
                text.substring(statement.value().from(), statement.value().to());
        Object parsed = Toml.parse(BELOW + " = " + written).get(BELOW);
        if (parsed instanceof TomlTable table) {
            return changed(table, path.get(path.size() - 1), value);
        }
        if (parsed instanceof TomlArray array) {
            int member = number(path.get(0)) - 1;
            List<String> elements = IntStream.range(0, array.size())
                    .mapToObj(index -> TomlValue.written(array.get(index)))
                    .collect(Collectors.toCollection(ArrayList::new));
            boolean isWhole = path.size() == 1;
            if (isWhole && value.isPresent()) {
                elements.add(value.get());
            } else if (isWhole) {
                elements.remove(member);
            } else {
                elements.set(member, changed(array.getTable(member), path.get(1), value));
            }
            return "[" + String.join(", ", elements) + "]";
        }
        return value.orElse(written);
    }

    private static String changed(TomlTable table, String key, Optional<String> value) {
        Map<String, String> lines = new LinkedHashMap<>();
        table.entrySet().forEach(entry -> lines.put(entry.getKey(), TomlValue.written(entry.getValue())));
        lines.remove(key);
        value.ifPresent(found -> lines.put(key, found));
        return lines.isEmpty()
                ? "{}"
                : lines.entrySet().stream()
                        .map(line -> PlanValueText.key(line.getKey()) + " = " + line.getValue())
                        .collect(Collectors.joining(", ", "{ ", " }"));
    }

    private static int number(String member) {
        return Integer.parseInt(member.substring(member.lastIndexOf('[') + 1, member.length() - 1));
    }
}
