package org.nextpull.window.start;

import java.util.Optional;
import org.nextpull.app.PlanFile;
import org.nextpull.finding.Outcome;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.KeyKind;
import org.nextpull.plan.text.PlanDraft;
import org.nextpull.plan.text.PlanKey;

/**
 * The plan that the form is about, with its file. Immutable: every change is another form.
 *
 * @param draft the plan
 * @param file where it lies; empty for a new one
 * @param written the draft as it lies in the file
 */
record PlanForm(PlanDraft draft, Optional<String> file, PlanDraft written) {

    /** A new plan, with the tables that nearly every session needs. */
    static PlanForm fresh() {
        PlanDraft draft = PlanDraft.empty()
                .withTable("engine")
                .withTable("band")
                .withTable("timing")
                .withTable("limits");
        return new PlanForm(draft, Optional.empty(), draft);
    }

    /** The plan in a file; failed where it cannot be read or is no TOML. Not for the event thread. */
    static Outcome<PlanForm> read(String name) {
        String file = name.strip();
        return PlanFile.text(file).then(text -> of(text, file));
    }

    /** The text of a file; failed where it is no TOML. */
    static Outcome<PlanForm> of(String text, String file) {
        return PlanDraft.of(text, file).map(draft -> new PlanForm(draft, Optional.of(file), draft));
    }

    PlanForm typed(String table, PlanKey<?> field, String text) {
        return with(draft.with(table, field.name(), field.kind(), text));
    }

    PlanForm switched(String table, boolean on) {
        return with(on ? draft.withTable(table) : draft.withoutTable(table));
    }

    /** One more of a list of tables. */
    PlanForm added(String list) {
        long count = draft.tables().stream()
                .filter(table -> table.startsWith(list + "["))
                .count();
        return with(draft.withTable(list + "[" + (count + 1) + "]"));
    }

    /** Without a key that no plan has. */
    PlanForm without(String key) {
        return with(without(key, draft));
    }

    boolean isChanged() {
        return !draft.equals(written);
    }

    Outcome<SweepPlan> plan() {
        return draft.plan(file.orElse("plan.toml"));
    }

    private PlanForm with(PlanDraft newDraft) {
        return new PlanForm(newDraft, file, written);
    }

    /** A draft without a key or a table, named as findings name it; the same draft where it has no such thing. */
    static PlanDraft without(String key, PlanDraft draft) {
        int point = key.indexOf('.');
        if (point < 0) {
            return draft.has(key) ? draft.withoutTable(key) : draft.with("", key, KeyKind.TEXT, "");
        }
        String below = key.substring(point + 1);
        int next = below.indexOf('.');
        return draft.with(key.substring(0, point), next < 0 ? below : below.substring(0, next), KeyKind.TEXT, "");
    }
}
