package org.nextpull.report.text;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.nextpull.channel.Role;
import org.nextpull.plan.Limit;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanDraft;
import org.nextpull.plan.text.PlanKey;
import org.nextpull.plan.text.PlanKeys;
import org.nextpull.report.WatchText;
import org.nextpull.session.SessionResult;

/** What a plan watches and what it does not: every limit, the value that the plan gives it, and the channel that has to watch it. */
public final class PlanCheckText {
    private PlanCheckText() {}

    /**
     * The table of the limits.
     *
     * @param plan the plan
     * @param draft its text
     * @param day a day that was logged under it, where there is one
     */
    public static String of(SweepPlan plan, PlanDraft draft, Optional<SessionResult> day) {
        List<SessionResult.WatchGap> gaps = day.map(SessionResult::watchGaps).orElse(List.of());
        TextTable table = new TextTable("limit", "key", "value", "watched by");
        for (Limit limit : Limit.values()) {
            PlanKey<?> key = PlanKeys.of(limit);
            boolean watched = plan.watched().contains(limit);
            Optional<SessionResult.WatchGap> gap =
                    gaps.stream().filter(each -> each.limit() == limit).findFirst();
            Optional<String> level =
                    limit == Limit.KNOCK ? draft.typed("limits", Role.KNOCK_LEVEL.id()) : Optional.empty();
            String channel = limit.role().id()
                    + level.map(value -> " or " + Role.KNOCK_LEVEL.id()).orElse("");
            table.row(
                    WatchText.name(limit),
                    key.name(),
                    draft.typed("limits", key.name())
                            .map(value -> value + " " + key.unitSign())
                            .or(() -> level.map(value -> Role.KNOCK_LEVEL.id() + " " + value))
                            .orElse(watched ? "mixture sweep" : "-")
                            .strip(),
                    !watched
                            ? "no limit is set: not watched"
                            : gap.map(missing -> "NOT WATCHED: " + WatchText.reason(missing))
                                    .orElse(day.isPresent() ? channel + ", in every pull" : "needs " + channel));
        }
        return table.text();
    }

    /** Limits that no plan should do without, by name, that this one leaves open. */
    public static Optional<String> open(SweepPlan plan) {
        List<String> missing = Arrays.stream(Limit.values())
                .filter(limit -> limit == Limit.KNOCK || limit == Limit.EXHAUST || limit == Limit.SPEED)
                .filter(limit -> !plan.watched().contains(limit))
                .map(WatchText::name)
                .toList();
        return missing.isEmpty()
                ? Optional.empty()
                : Optional.of("No limit is set for " + String.join(", ", missing)
                        + ". What the plan leaves open nothing watches: set it, or watch it yourself.");
    }
}
