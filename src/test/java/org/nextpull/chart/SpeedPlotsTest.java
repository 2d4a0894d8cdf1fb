package org.nextpull.chart;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.Session;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.UnitSystem;
import org.nextpull.window.SampleDays;

/** Which pulls of a day are drawn over speed, on invented days. */
class SpeedPlotsTest {
    /** The strongest clean pull of this day was run half a degree and more above what the knock of a later one leaves. */
    @Test
    void whatKnockForbidsSinceIsNotTheBest() {
        SessionResult day = Session.evaluate(SampleDays.input("hillclimb-knock"));
        SpeedPlot plot = SpeedPlots.of(day, UnitSystem.METRIC).orElseThrow();
        String best = plot.lines().get(1).name();
        assertThat(best).startsWith("best, pull ");
        int number = Integer.parseInt(best.substring("best, pull ".length()));
        MeasuredPull pull = day.pulls().get(number - 1);
        assertThat(pull.setting().advance().orElseThrow().deg()).isLessThanOrEqualTo(18.2);
        assertThat(day.pulls().stream().filter(day::isClean))
                .anyMatch(other -> other.setting().advance().orElseThrow().deg() > 19);
    }

    @Test
    void onADayOfSeveralLabelsEachPullIsNamedWithItsOwn() {
        SpeedPlot several = SpeedPlots.of(Session.evaluate(SampleDays.input("hillclimb-manifold")), UnitSystem.METRIC)
                .orElseThrow();
        assertThat(several.lines())
                .extracting(SpeedPlot.Line::name)
                .hasSizeGreaterThan(1)
                .allMatch(name -> name.matches("(first|best|last), pull [0-9]+ \\([a-z -]+\\)"));
    }
}
