package org.nextpull.window.start;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.nextpull.plan.text.KeyKind;

/** The fields of the form, out of {@code fields.txt}, whose head explains its lines. */
final class FormCatalogue {
    private FormCatalogue() {}

    static List<FormSection> load() {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(FormCatalogue.class.getResourceAsStream("fields.txt")),
                StandardCharsets.UTF_8))) {
            return read(reader.lines().toList());
        } catch (IOException broken) {
            throw new UncheckedIOException("the fields of the form cannot be read", broken);
        }
    }

    private static List<FormSection> read(List<String> lines) {
        List<FormSection> sections = new ArrayList<>();
        List<FormField> fields = new ArrayList<>();
        String header = "";
        for (String line : lines) {
            if (line.startsWith("*")) {
                close(header, fields, sections);
                header = line.substring(1);
            } else if (!line.isBlank() && !line.startsWith("#")) {
                fields.add(field(line));
            }
        }
        close(header, fields, sections);
        return List.copyOf(sections);
    }

    private static void close(String header, List<FormField> fields, List<FormSection> sections) {
        if (!header.isEmpty()) {
            List<String> cells = cells(header);
            FormSection.Presence presence = FormSection.Presence.valueOf(cells.get(3));
            sections.add(new FormSection(cells.get(0), cells.get(1), cells.get(2), presence, fields));
        }
        fields.clear();
    }

    private static FormField field(String line) {
        List<String> cells = cells(line);
        return new FormField(cells.get(0), KeyKind.valueOf(cells.get(1)), cells.get(2), cells.get(3), cells.get(4));
    }

    private static List<String> cells(String line) {
        return List.of(line.split("\\|", -1)).stream().map(String::strip).toList();
    }
}
