package org.nextpull.plan.text;

import org.nextpull.plan.Goal;

/** Table {@code [goal]}. */
final class GoalTable {
    private GoalTable() {}

    static Goal read(TableReader table) {
        Goal usual = Goal.defaults();
        return new Goal(
                table.word("stages", usual.stages()),
                table.word("response", usual.response()),
                table.number("near_best_percent", new Range(0.01, 10), usual.nearBestPercent()),
                table.number("worth_percent", new Range(0.01, 50), usual.worthPercent()),
                table.whole("max_pulls", new Range(1, 10_000), usual.maxPulls()),
                table.flag("learn_from_notebook").orElse(usual.learnFromNotebook()));
    }

    static String write(Goal goal) {
        TableWriter table = new TableWriter("[goal]");
        table.word("stages", goal.stages());
        table.word("response", goal.response());
        table.number("near_best_percent", goal.nearBestPercent());
        table.number("worth_percent", goal.worthPercent());
        table.number("max_pulls", goal.maxPulls());
        table.raw("learn_from_notebook", String.valueOf(goal.learnFromNotebook()));
        return table.written();
    }
}
