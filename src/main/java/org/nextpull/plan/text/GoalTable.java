package org.nextpull.plan.text;

import org.nextpull.plan.Goal;
import org.nextpull.plan.Goal.Response;
import org.nextpull.plan.text.PlanKey.Range;
import org.nextpull.plan.text.PlanTable.Presence;
import org.nextpull.unit.Unit;

/** Table {@code [goal]}. */
final class GoalTable {
    private static final Goal USUAL = Goal.defaults();
    static final PlanKey<Integer> MAX_PULLS = PlanKey.of("max_pulls", KeyFormat.whole(new Range(1, 10_000)))
            .usual(USUAL.maxPulls())
            .said("Max pulls", "What the day has room for.");

    private static final PlanKey<Response> RESPONSE = PlanKey.of("response", KeyFormat.word(Response.class))
            .usual(USUAL.response())
            .said("Judge by", "The band average that is fitted.");
    private static final PlanKey<Double> NEAR_BEST = PlanKey.of("near_best_percent", percent(new Range(0.01, 10)))
            .usual(USUAL.nearBestPercent())
            .said(
                    "MBT tolerance",
                    "Best timing is the least advance within this of the peak; spark that brings less is only risk. The lean"
                            + " and rich edges lie this far below it.");
    private static final PlanKey<Double> WORTH = PlanKey.of("worth_percent", percent(new Range(0.01, 50)))
            .usual(USUAL.worthPercent())
            .said("Smallest useful difference", "Smallest difference that matters when parts or fuels are compared.");
    private static final PlanKey<Boolean> LEARN = PlanKey.of("learn_from_notebook", KeyFormat.flag())
            .usual(USUAL.learnFromNotebook())
            .said(
                    "Use past sessions",
                    "Whether earlier sessions of this engine may shorten steps; they never lengthen one.");

    static final PlanTable<Goal> TABLE = PlanTable.of(
            "goal",
            Presence.ALWAYS,
            "Goal",
            "What is looked for, and when it is enough.",
            keys -> keys.key(RESPONSE, Goal::response)
                    .key(NEAR_BEST, Goal::nearBestPercent)
                    .key(WORTH, Goal::worthPercent)
                    .key(MAX_PULLS, Goal::maxPulls)
                    .key(LEARN, Goal::learnFromNotebook));

    private GoalTable() {}

    /** Percent that stay percent, since so they are spoken of. */
    private static KeyFormat<Double> percent(Range range) {
        return KeyFormat.number(range).in(Unit.PERCENT);
    }

    static Goal read(TableReader table) {
        return new Goal(
                table.get(RESPONSE), table.get(NEAR_BEST), table.get(WORTH), table.get(MAX_PULLS), table.get(LEARN));
    }
}
