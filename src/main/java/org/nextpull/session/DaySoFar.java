package org.nextpull.session;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.nextpull.advice.SaidStops;
import org.nextpull.advice.Verdict;
import org.nextpull.channel.SparkMap;
import org.nextpull.plan.SweepPlan;
import org.nextpull.response.MeasuredPull;
import org.nextpull.response.Reading;

/**
 * What is known of a day that is gone through pull by pull, so that each state costs what its last pull adds, and says what the day would
 * say that ended there. Grows. Not for use by several threads.
 */
final class DaySoFar {
    /** Sweeps of candidates that have ended. */
    final Map<CandidatePlanner.Sweep, Verdict> sweeps = new HashMap<>();
    /** The stops that were said. */
    final SaidStops stops = new SaidStops();
    /** Those of the day as it would be had the operator changed nothing by hand. */
    final SaidStops stopsUnchanged = new SaidStops();

    private final List<MeasuredPull.Curve> heard = new ArrayList<>();
    /** Each pull as the last state that had it took it. */
    private final List<MeasuredPull> fitted = new ArrayList<>();

    private int settled;

    /** The pulls of a state with what only the day tells of their knock, as {@link KnockOfDay#heard}. */
    List<MeasuredPull.Curve> heard(
            SweepPlan plan, List<MeasuredPull.Curve> measured, Function<List<MeasuredPull>, Optional<SparkMap>> asked) {
        return KnockOfDay.heard(plan, measured, asked, heard);
    }

    /** Those pulls as they are fitted. A stop is forgotten where a later pull says something else of one that it was said by. */
    List<MeasuredPull> fitted(SweepPlan plan, List<MeasuredPull.Curve> now) {
        int settledNow = KnockOfDay.settled(plan, now.size());
        for (int place = Math.min(settled, settledNow); place < now.size(); place++) {
            MeasuredPull pull =
                    Reading.fitted(now.get(place).pull(), plan.goal().response());
            if (place == fitted.size()) {
                fitted.add(pull);
            } else if (!pull.knock().equals(fitted.get(place).knock())) {
                stops.forgetAfter(place);
                stopsUnchanged.forgetAfter(place);
                fitted.set(place, pull);
            }
        }
        settled = settledNow;
        return List.copyOf(fitted.subList(0, now.size()));
    }
}
