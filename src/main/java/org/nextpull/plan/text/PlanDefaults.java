package org.nextpull.plan.text;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.nextpull.plan.DynoFacts;
import org.nextpull.plan.EngineFacts;
import org.nextpull.plan.SweepPlan;

/**
 * What holds where a key is not written. Some defaults follow from other keys of the plan; they are not kept anywhere a second time, but
 * found by reading a plan that lacks the keys.
 */
public final class PlanDefaults {
    private static final String ENGINE = "engine";
    private static final String DYNO = "dyno";

    private PlanDefaults() {}

    /** The defaults beside a draft by {@code table.key}, a list of tables without its number, each as a person would type it. */
    public static Map<String, String> of(PlanDraft draft) {
        String induction = word(draft, ENGINE, "induction", EngineFacts.Induction.NATURAL);
        String kind = word(draft, DYNO, "kind", DynoFacts.Kind.ENGINE_BRAKE);
        PlanDraft needed = needed(induction, kind);
        SweepPlan plan = needed.plan("defaults")
                .value()
                .orElseThrow(() -> new IllegalStateException("the needed keys alone are no plan"));
        PlanDraft all = PlanDraft.of(PlanWriter.write(plan), "defaults")
                .value()
                .orElseThrow(() -> new IllegalStateException("a written plan is no TOML"));
        Map<String, String> defaults = new LinkedHashMap<>();
        for (String table : all.tables()) {
            for (String key : all.keys(table)) {
                if (needed.typed(table, key).isEmpty()) {
                    defaults.put(
                            PlanDraft.listOf(table) + "." + key,
                            all.typed(table, key).orElse(""));
                }
            }
        }
        defaults.put("engine.induction", Shown.word(EngineFacts.Induction.NATURAL));
        defaults.put("dyno.kind", Shown.word(DynoFacts.Kind.ENGINE_BRAKE));
        return defaults;
    }

    private static <E extends Enum<E>> String word(PlanDraft draft, String table, String key, E fallback) {
        List<String> words = PlanWords.of(fallback.getDeclaringClass());
        Optional<String> typed = draft.typed(table, key).filter(words::contains);
        return typed.orElse(Shown.word(fallback));
    }

    /** The least that makes every table appear. */
    private static PlanDraft needed(String induction, String kind) {
        return PlanDraft.empty()
                .with(ENGINE, "induction", KeyKind.WORD, induction)
                .with(DYNO, "kind", KeyKind.WORD, kind)
                .with(DYNO, "inertia_in_log", KeyKind.FLAG, kind.startsWith("chassis") ? "true" : "")
                .with("band", "from_rpm", KeyKind.NUMBER, "2000")
                .with("band", "to_rpm", KeyKind.NUMBER, "6000")
                .with("timing", "start_deg", KeyKind.NUMBER, "20")
                .with("timing", "least_deg", KeyKind.NUMBER, "10")
                .with("timing", "most_deg", KeyKind.NUMBER, "30")
                .with("mixture", "start_lambda", KeyKind.NUMBER, "0.87")
                .with("mixture", "richest_lambda", KeyKind.NUMBER, "0.8")
                .with("mixture", "leanest_lambda", KeyKind.NUMBER, "0.95")
                .with("limits", "lean_lambda", KeyKind.NUMBER, "1")
                .withTable("wire[1]");
    }
}
