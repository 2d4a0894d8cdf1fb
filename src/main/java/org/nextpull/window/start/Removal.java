package org.nextpull.window.start;

import org.nextpull.plan.text.KeyKind;
import org.nextpull.plan.text.PlanDraft;

/** Takes a key or a table out of a draft, named as findings name it. */
final class Removal {
    private Removal() {}

    /** The draft without it; the same draft where it has no such thing. */
    static PlanDraft of(String key, PlanDraft draft) {
        int point = key.indexOf('.');
        if (point < 0) {
            return draft.has(key) ? draft.withoutTable(key) : draft.with("", key, KeyKind.TEXT, "");
        }
        String below = key.substring(point + 1);
        int next = below.indexOf('.');
        return draft.with(key.substring(0, point), next < 0 ? below : below.substring(0, next), KeyKind.TEXT, "");
    }
}
