package org.nextpull.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.nextpull.advice.Action;
import org.nextpull.advice.Advice;
import org.nextpull.advice.EarlierStop;
import org.nextpull.unit.Advance;

/** A day that was over and is opened again by striking a pull says so. */
class StruckStopTest {
    private static Advice advice(SessionResult result) {
        return result.verdict().orElseThrow().advice();
    }

    /** A day that follows the advice to its stop, on an invented engine with its peak at 27 deg. */
    private static List<Days.Run> followed() {
        List<Days.Run> runs = new ArrayList<>();
        double[] scatter = {0.04, -0.05, 0.02, 0.06, -0.03};
        double advance = 20;
        while (runs.size() < 20) {
            double x = advance - 27;
            double noise = scatter[runs.size() % scatter.length] / 100;
            runs.add(new Days.Run(advance, 200 * (1 - 5e-4 * x * x) * (1 + noise)));
            Advice said = advice(Days.ofTable(runs));
            if (said.action() == Action.STOP) {
                return runs;
            }
            advance = said.setting()
                    .flatMap(setting -> setting.advance())
                    .map(Advance::deg)
                    .orElseThrow();
        }
        throw new AssertionError("no stop: " + runs);
    }

    @Test
    void strikingTheLastConfirmingPullOpensTheDayAndSaysSo() {
        List<Days.Run> runs = followed();
        SessionInput day = SessionInput.of(Days.timing(), List.of(), List.of(Days.table(runs)));
        Amendments struck = new Amendments(Map.of(runs.size(), "throttle slipped"), Set.of(), Map.of());
        Advice open = advice(Session.evaluate(day.withAmendments(struck)));

        assertThat(open.action()).isNotEqualTo(Action.STOP);
        EarlierStop stop = open.earlier().orElseThrow();
        assertThat(stop.afterPull()).isEqualTo(runs.size());
        assertThat(stop.reopened().orElseThrow().cause()).isEqualTo(EarlierStop.Cause.BY_HAND);
    }
}
