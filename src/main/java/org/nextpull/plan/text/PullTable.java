package org.nextpull.plan.text;

import java.util.OptionalDouble;
import org.nextpull.plan.PullFacts;
import org.nextpull.plan.PullFacts.Kind;
import org.nextpull.unit.Unit;

/** Table {@code [pull]}. */
final class PullTable {
    private static final String FULL_LOAD = "full_load_percent";

    private PullTable() {}

    static PullFacts read(TableReader table) {
        PullFacts usual = PullFacts.defaults();
        Kind kind = table.word("kind", usual.kind());
        OptionalDouble fullLoad = Si.of(Unit.PERCENT, table.number(FULL_LOAD, new Range(10, 100)));
        return new PullFacts(
                kind,
                fullLoad.orElse(usual.fullLoad()),
                table.whole("throw_away_first", new Range(0, 100), usual.throwAwayFirst()),
                table.number("settle_s", new Range(0, 60), usual.settleS()),
                table.number("hold_s", new Range(0.1, 600), usual.holdS()));
    }

    static String write(PullFacts pull) {
        TableWriter table = new TableWriter("[pull]");
        table.word("kind", pull.kind());
        table.quantity(FULL_LOAD, Unit.PERCENT, OptionalDouble.of(pull.fullLoad()));
        table.number("settle_s", pull.settleS());
        table.number("hold_s", pull.holdS());
        table.number("throw_away_first", pull.throwAwayFirst());
        return table.written();
    }
}
