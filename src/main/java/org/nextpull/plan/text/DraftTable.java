package org.nextpull.plan.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One table of a plan that is being written.
 *
 * @param name as places of findings name it
 * @param notes comments at its header
 * @param lines its keys
 */
record DraftTable(String name, Notes notes, List<Line> lines) {
    DraftTable {
        lines = List.copyOf(lines);
    }

    /**
     * Comments at a line.
     *
     * @param above a line each
     * @param beside at its end, or empty
     */
    record Notes(List<String> above, String beside) {
        Notes {
            above = List.copyOf(above);
        }

        static Notes none() {
            return new Notes(List.of(), "");
        }

        private String around(String line) {
            StringBuilder text = new StringBuilder();
            above.forEach(comment -> text.append(comment).append('\n'));
            return text.append(line)
                    .append(beside.isEmpty() ? "" : "  " + beside)
                    .append('\n')
                    .toString();
        }
    }

    /**
     * A key.
     *
     * @param key its name
     * @param value as TOML, on one line
     * @param notes comments at it
     */
    record Line(String key, String value, Notes notes) {}

    static DraftTable named(String name) {
        return new DraftTable(name, Notes.none(), List.of());
    }

    DraftTable renamed(String newName) {
        return new DraftTable(newName, notes, lines);
    }

    Optional<Line> find(String key) {
        return lines.stream().filter(line -> line.key().equals(key)).findFirst();
    }

    DraftTable with(String key, String value) {
        List<Line> changed = new ArrayList<>(lines);
        Optional<Line> before = find(key);
        if (before.isPresent()) {
            changed.replaceAll(line -> line.key().equals(key) ? new Line(key, value, line.notes()) : line);
        } else {
            changed.add(new Line(key, value, Notes.none()));
        }
        return new DraftTable(name, notes, changed);
    }

    DraftTable without(String key) {
        return new DraftTable(
                name,
                notes,
                lines.stream().filter(line -> !line.key().equals(key)).toList());
    }

    String text() {
        StringBuilder text = new StringBuilder();
        if (!name.isEmpty()) {
            text.append(notes.around(header()));
        }
        lines.forEach(line -> text.append(line.notes().around(Shown.key(line.key()) + " = " + line.value())));
        return text.toString();
    }

    private String header() {
        String list = PlanDraft.listOf(name);
        return list.equals(name) ? "[" + name + "]" : "[[" + list + "]]";
    }
}
