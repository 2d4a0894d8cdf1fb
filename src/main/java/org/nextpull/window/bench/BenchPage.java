package org.nextpull.window.bench;

import java.util.List;
import java.util.Optional;
import org.nextpull.chart.MapPlot;
import org.nextpull.chart.SpeedPlot;
import org.nextpull.chart.SweepPlot;
import org.nextpull.report.ConditionText;
import org.nextpull.report.NextStep;

/**
 * Everything that the bench page shows, in words and data; the views add nothing.
 *
 * @param heading what the day is about
 * @param link how the data arrives
 * @param recording whether it is kept
 * @param running the pull in progress; empty between pulls
 * @param pull the pull in progress, which then is the page; empty between pulls
 * @param urgent what must be seen on every page, worst first
 * @param lead the next step
 * @param map the map to set or to leave, where the setting is one
 * @param conditions the start conditions
 * @param sweep the response against the factor that is swept now
 * @param other the same against the other factor, once both were swept
 * @param sparkMap advance over speed, where the ignition holds a map
 * @param speed torque and power over speed
 * @param cards the pulls, in the order of the day
 * @param next the setting of the next pull, for the empty card at the end; empty at a stop
 * @param day what the sweeps and the repeats say, and what is worth knowing of the day
 */
public record BenchPage(
        String heading,
        Remark link,
        Remark recording,
        Optional<Remark> running,
        Optional<PullPage> pull,
        List<Remark> urgent,
        NextStep lead,
        Optional<MapStrip> map,
        List<ConditionText.Line> conditions,
        Optional<SweepPlot> sweep,
        Optional<SweepPlot> other,
        Optional<MapPlot> sparkMap,
        Optional<SpeedPlot> speed,
        List<PullCard> cards,
        Optional<String> next,
        List<Remark> day) {
    public BenchPage {
        urgent = List.copyOf(urgent);
        conditions = List.copyOf(conditions);
        cards = List.copyOf(cards);
        day = List.copyOf(day);
    }
}
