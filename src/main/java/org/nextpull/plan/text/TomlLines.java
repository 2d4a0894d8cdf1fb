package org.nextpull.plan.text;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tomlj.Toml;

/**
 * The lines of a text that is TOML, a statement each: headers and keys, with where their values stand, so that one can be changed while
 * all others stay as they are.
 */
final class TomlLines {
    private static final int TRIPLE = 3;

    private final String text;
    private final List<Statement> found = new ArrayList<>();
    private final Map<String, Integer> members = new HashMap<>();
    private final List<String> comments = new ArrayList<>();
    private List<String> header = List.of();
    private int at;

    private TomlLines(String text) {
        this.text = text;
    }

    /**
     * A header or a key with its value.
     *
     * @param isHeader whether it heads a table
     * @param path of the table or key, with the number of a member of a list, as in {@code wire[1]}
     * @param header path of the header that it stands below; of a header, its own
     * @param span its whole lines
     * @param value where its value stands; of a header, where nothing does
     * @param within comments inside the value
     */
    record Statement(
            boolean isHeader, List<String> path, List<String> header, Extent span, Extent value, List<String> within) {
        boolean isAt(List<String> wanted) {
            return path.equals(wanted);
        }

        boolean isBelow(List<String> wanted) {
            return path.size() >= wanted.size()
                    && path.subList(0, wanted.size()).equals(wanted);
        }
    }

    /** From a character to before another. */
    record Extent(int from, int to) {}

    /** The statements of a text, in its order; comments and blank lines are between them. */
    static List<Statement> of(String text) {
        TomlLines lines = new TomlLines(text);
        while (lines.at < text.length()) {
            lines.line();
        }
        return List.copyOf(lines.found);
    }

    private void line() {
        int from = at;
        skipBlanks();
        if (at < text.length() && text.charAt(at) == '[') {
            header(from);
        } else if (at < text.length() && "\r\n#".indexOf(text.charAt(at)) < 0) {
            key(from);
        } else {
            endOfLine();
        }
    }

    private void header(int from) {
        boolean isList = text.startsWith("[[", at);
        at += isList ? 2 : 1;
        int name = at;
        skipTo(']');
        List<String> path = numbered(Toml.parseDottedKey(text.substring(name, at)), isList);
        at += isList ? 2 : 1;
        int end = at;
        endOfLine();
        header = path;
        found.add(new Statement(true, path, path, new Extent(from, at), new Extent(end, end), List.of()));
    }

    /** Names of lists with the number of their newest member. */
    private List<String> numbered(List<String> names, boolean isList) {
        List<String> path = new ArrayList<>();
        for (int index = 0; index < names.size(); index++) {
            path.add(names.get(index));
            String whole = String.join(".", path);
            if (isList && index == names.size() - 1) {
                members.merge(whole, 1, Integer::sum);
            }
            Integer member = members.get(whole);
            if (member != null) {
                path.set(index, names.get(index) + "[" + member + "]");
            }
        }
        return List.copyOf(path);
    }

    private void key(int from) {
        int name = at;
        skipTo('=');
        List<String> path = new ArrayList<>(header);
        path.addAll(Toml.parseDottedKey(text.substring(name, at).strip()));
        at++;
        skipBlanks();
        comments.clear();
        Extent value = value();
        endOfLine();
        found.add(new Statement(false, List.copyOf(path), header, new Extent(from, at), value, List.copyOf(comments)));
    }

    private Extent value() {
        int from = at;
        int to = at;
        int depth = 0;
        while (at < text.length()) {
            char character = text.charAt(at);
            if (depth == 0 && "\r\n#".indexOf(character) >= 0) {
                break;
            }
            if (character == '#') {
                int start = at;
                skipTo('\n');
                comments.add(text.substring(start, at).stripTrailing());
            } else if (character == '"' || character == '\'') {
                string(character);
            } else {
                depth += "[{".indexOf(character) >= 0 ? 1 : 0;
                depth -= "]}".indexOf(character) >= 0 ? 1 : 0;
                at++;
            }
            to = Character.isWhitespace(character) ? to : at;
        }
        return new Extent(from, to);
    }

    private void string(char quote) {
        String one = String.valueOf(quote);
        String end = text.startsWith(one.repeat(TRIPLE), at) ? one.repeat(TRIPLE) : one;
        at += end.length();
        while (at < text.length() && !text.startsWith(end, at)) {
            at += quote == '"' && text.charAt(at) == '\\' ? 2 : 1;
        }
        at = Math.min(text.length(), at + end.length());
        // a string over several lines may end with up to two more of its quotes
        while (end.length() == TRIPLE && at < text.length() && text.charAt(at) == quote) {
            at++;
        }
    }

    /** To the next such character that is in no string. */
    private void skipTo(char wanted) {
        while (at < text.length() && text.charAt(at) != wanted) {
            if (wanted != '\n' && (text.charAt(at) == '"' || text.charAt(at) == '\'')) {
                string(text.charAt(at));
            } else {
                at++;
            }
        }
    }

    private void skipBlanks() {
        while (at < text.length() && (text.charAt(at) == ' ' || text.charAt(at) == '\t')) {
            at++;
        }
    }

    private void endOfLine() {
        int end = text.indexOf('\n', at);
        at = end < 0 ? text.length() : end + 1;
    }
}
