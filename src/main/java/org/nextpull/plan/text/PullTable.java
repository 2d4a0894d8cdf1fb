package org.nextpull.plan.text;

import java.util.List;
import java.util.Optional;
import org.nextpull.finding.Finding;
import org.nextpull.plan.PullFacts;
import org.nextpull.plan.PullFacts.Kind;
import org.nextpull.plan.text.PlanKey.Range;
import org.nextpull.plan.text.PlanTable.Presence;
import org.nextpull.unit.Unit;

/** Table {@code [pull]}. */
final class PullTable {
    private static final PullFacts USUAL = PullFacts.defaults();
    static final PlanKey<Integer> DISCARD = PlanKey.of("throw_away_first", KeyFormat.whole(new Range(0, 100)))
            .usual(USUAL.throwAwayFirst())
            .said("Discard first", "Pulls at the start of the day that only warm things up.");

    private static final PlanKey<Kind> KIND = PlanKey.of("kind", KeyFormat.word(Kind.class))
            .usual(USUAL.kind())
            .said("Kind", "Found from the log, unless you say it: accelerating, stepped speeds, or held at one speed.");
    private static final PlanKey<Double> FULL_LOAD = PlanKey.of(
                    "full_load_percent", KeyFormat.number(Unit.PERCENT, new Range(10, 100)))
            .usual(USUAL.fullLoad())
            .said(
                    "Full load from",
                    "Throttle from which the load counts as full; lower it where the sensor never shows 95 %.");
    private static final PlanKey<Double> SETTLE = PlanKey.of(
                    "settle_s", KeyFormat.number(Unit.SECOND, new Range(0, 60)))
            .usual(USUAL.settleS())
            .said(
                    "Settling",
                    "Longest settling after the throttle opened or the spark was stepped; it is left out of the"
                            + " average.");
    private static final PlanKey<Double> HOLD = PlanKey.of("hold_s", KeyFormat.number(Unit.SECOND, new Range(0.1, 600)))
            .usual(USUAL.holdS())
            .said("Min hold", "A held speed that is shorter gives no point.");

    static final PlanKey<List<Double>> HOLD_SPEEDS = PlanKey.of("hold_speeds", KeyFormat.speeds())
            .said(
                    "Held speeds",
                    "Speeds that are held, one after another; with kind hold a running session says the advance to set"
                            + " at each.");
    private static final PlanKey<Double> HOLD_MOST = PlanKey.of(
                    "hold_most_s", KeyFormat.number(Unit.SECOND, new Range(0.1, 3600)))
            .said("Max hold", "Longest time at load at a held speed, 45 s where it is left out; not below `hold_s`.");

    static final PlanTable<PullFacts> TABLE = PlanTable.of(
            "pull",
            Presence.ALWAYS,
            "Pulls",
            "How a pull looks in the log.",
            keys -> keys.key(KIND, PullFacts::kind)
                    .key(FULL_LOAD, PullFacts::fullLoad)
                    .key(SETTLE, PullFacts::settleS)
                    .key(HOLD, PullFacts::holdS)
                    .maybe(
                            HOLD_SPEEDS,
                            pull -> Optional.of(pull.held().speedsRpm()).filter(speeds -> !speeds.isEmpty()))
                    .number(HOLD_MOST, pull -> pull.held().mostS())
                    .key(DISCARD, PullFacts::throwAwayFirst));

    private PullTable() {}

    static PullFacts read(TableReader table) {
        PullFacts.HeldSpeeds held =
                new PullFacts.HeldSpeeds(table.find(HOLD_SPEEDS).orElse(List.of()), table.number(HOLD_MOST));
        double holdS = table.get(HOLD);
        if (holdS > held.mostS().orElse(holdS)) {
            table.problems().order(Finding.Severity.ERROR, table.spot(HOLD), "not above", table.spot(HOLD_MOST));
        }
        if (table.get(KIND) != PullFacts.Kind.HOLD) {
            table.notUsed(HOLD_SPEEDS);
            table.notUsed(HOLD_MOST);
        }
        return new PullFacts(table.get(KIND), table.get(FULL_LOAD), table.get(DISCARD), table.get(SETTLE), holdS, held);
    }
}
