package org.nextpull.window.start;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.plan.text.KeyKind;
import org.nextpull.plan.text.PlanDraft;
import org.nextpull.plan.text.PlanKey;
import org.nextpull.plan.text.PlanKeys;
import org.nextpull.plan.text.PlanTable;
import org.nextpull.report.FindingText;
import org.nextpull.report.Shown;
import org.nextpull.unit.Quantity;
import org.nextpull.unit.Unit;

/** Makes the form of a draft: every field with its default and what is wrong with it. */
final class FormPresenter {
    private static final String LIST_MEMBER = "\\[\\d+]$";

    private final FindingText sentences;
    private final Shown shown;

    FormPresenter(Shown shown) {
        this.sentences = FindingText.in(shown);
        this.shown = shown;
    }

    FormPage page(PlanDraft draft, Optional<String> file, boolean isChanged) {
        Map<String, List<FormPage.Said>> said = new HashMap<>();
        List<Finding> findings = draft.plan(file.orElse("plan.toml")).findings();
        findings.forEach(finding -> said.computeIfAbsent(place(finding), place -> new ArrayList<>())
                .add(new FormPage.Said(finding.isError(), named(sentences.sentence(finding)))));
        List<FormPage.Part> parts = new ArrayList<>();
        for (PlanTable<?> section : sections()) {
            for (String table : tables(section, draft)) {
                parts.add(part(section, table, draft, file.isEmpty(), said));
            }
        }
        Set<String> seen = new HashSet<>();
        parts.forEach(part -> seen.add(part.table()));
        parts.forEach(part -> part.rows().forEach(row -> seen.add(row.id())));
        List<FormPage.Loose> loose = findings.stream()
                .filter(finding -> !seen.contains(place(finding)))
                .map(finding -> loose(finding, draft))
                .toList();
        return new FormPage(file, isChanged, parts, loose, kept(draft));
    }

    private static List<PlanTable<?>> sections() {
        return PlanKeys.tables().stream()
                .filter(table -> table.presence() != PlanTable.Presence.LISTED_IN_TEXT)
                .toList();
    }

    private static List<PlanKey<?>> fields(PlanTable<?> section) {
        return section.keys().stream()
                .filter(key -> key.kind() != KeyKind.IN_TEXT)
                .toList();
    }

    /** A sentence that names fields as the form does. */
    private static String named(String sentence) {
        String named = sentence;
        for (PlanTable<?> section : sections()) {
            for (PlanKey<?> field : fields(section)) {
                String key = Pattern.quote(section.name() + "." + field.name());
                named = named.replaceAll("\\b" + key + "\\b", Matcher.quoteReplacement("\"" + field.label() + "\""));
            }
        }
        return named;
    }

    /** A finding about one of a list of values belongs to the list. */
    private static String place(Finding finding) {
        String key = finding.place().key().orElse("");
        String whole = key.replaceFirst(LIST_MEMBER, "");
        return whole.contains(".") ? whole : key;
    }

    private static List<String> tables(PlanTable<?> section, PlanDraft draft) {
        if (section.presence() != PlanTable.Presence.LISTED) {
            return List.of(section.name());
        }
        List<String> members = draft.tables().stream()
                .filter(table -> table.replaceFirst(LIST_MEMBER, "").equals(section.name()))
                .toList();
        return members.isEmpty() ? List.of(section.name()) : members;
    }

    /** What is missing in a plan that was never written is no error yet: somebody is filling it in. */
    private FormPage.Part part(
            PlanTable<?> section, String table, PlanDraft draft, boolean isNew, Map<String, List<FormPage.Said>> said) {
        boolean isPresent = draft.has(table);
        boolean isOpen = isPresent || section.presence() == PlanTable.Presence.ALWAYS;
        List<FormPage.Row> rows = new ArrayList<>();
        for (PlanKey<?> field : isOpen ? fields(section) : List.<PlanKey<?>>of()) {
            String typed = draft.typed(table, field.name()).orElse("");
            String usual = draft.usual(table, field).orElse("");
            List<FormPage.Said> wrong = said.getOrDefault(table + "." + field.name(), List.of());
            boolean isMissing = isNew && typed.isEmpty() && wrong.stream().anyMatch(FormPage.Said::isError);
            rows.add(new FormPage.Row(
                    table,
                    field,
                    typed,
                    isMissing ? "needed" : usual,
                    draft.words(table, field),
                    converted(field, typed.isEmpty() ? usual : typed),
                    isMissing,
                    isMissing ? List.of() : wrong));
        }
        return new FormPage.Part(table, section, isPresent, rows, said.getOrDefault(table, List.of()));
    }

    private FormPage.Loose loose(Finding finding, PlanDraft draft) {
        Optional<String> removable = finding.place()
                .key()
                .filter(key -> finding.code() == FindingCode.PLAN_UNKNOWN_KEY
                        && !PlanForm.without(key, draft).equals(draft));
        return new FormPage.Loose(new FormPage.Said(finding.isError(), sentences.sentence(finding)), removable);
    }

    private String kept(PlanDraft draft) {
        Set<String> fields = new HashSet<>();
        sections()
                .forEach(section -> fields(section).forEach(field -> fields.add(section.name() + "." + field.name())));
        List<String> unseen = new ArrayList<>();
        for (String table : draft.tables()) {
            String general = table.replaceFirst(LIST_MEMBER, "");
            if (general.equals("blend")) {
                unseen.add("the blend " + draft.typed(table, "name").orElse("without a name"));
            } else {
                draft.keys(table).stream()
                        .filter(key -> !fields.contains(general + "." + key))
                        .forEach(key -> unseen.add(table.isEmpty() ? key : table + "." + key));
            }
        }
        String rest = unseen.isEmpty() ? "" : ", and so is what this form does not show: " + String.join(", ", unseen);
        return "Comments, blank lines and spaces stay as they are" + rest + ".";
    }

    /** What is typed in the units of a plan, in the units that people read; blank where the two are the same. */
    private String converted(PlanKey<?> field, String typed) {
        Optional<Unit> written = field.unit();
        Quantity quantity = written.map(Unit::quantity).orElse(Quantity.COUNT);
        if (written.isEmpty() || typed.isBlank() || written.get() == shown.unit(quantity)) {
            return "";
        }
        List<String> values = new ArrayList<>();
        for (String number : typed.split("\\s*(,|;|\\.\\.|\\bto\\b)\\s*", -1)) {
            if (!number.strip().matches("[+-]?\\d{1,9}(\\.\\d{0,9})?")) {
                return "";
            }
            values.add(shown.number(quantity, written.get().toSi(Double.parseDouble(number.strip()))));
        }
        return String.join(" to ", values) + " " + shown.unit(quantity).sign();
    }
}
