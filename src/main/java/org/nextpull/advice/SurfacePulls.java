package org.nextpull.advice;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.nextpull.fit.SpeedRows;
import org.nextpull.fit.SurfacePull;
import org.nextpull.response.Figures;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Lambda;

/**
 * The pulls of a day, or of several, as the surface takes them: each with its own day, plateaus of one held speed that followed each other
 * under load as one pull, since they share its errors and warm on.
 */
final class SurfacePulls {
    /** Plateaus at one speed whose middles lie no further apart were one stretch under load: nobody cools down in less; no source. */
    private static final double ONE_STRETCH_S = 30;
    /** A decision stays under a second up to so many pulls; of a longer archive the oldest days are left out. */
    static final int MOST_PULLS = 120;

    private static final double PERCENT = 100;

    private final Function<MeasuredPull, List<Figures.AtSpeed>> rowsOf;

    /**
     * @param rowsOf the rows of a pull that have torque and advance
     */
    SurfacePulls(Function<MeasuredPull, List<Figures.AtSpeed>> rowsOf) {
        this.rowsOf = rowsOf;
    }

    static int dayOf(MeasuredPull pull) {
        return pull.origin().day();
    }

    /**
     * The pulls of the newest days, as many days as the surface takes; of a last day that is longer the newest. Older pulls are not looked
     * at, so that a decision costs as much on a long day as on a short one.
     *
     * @param pulls pulls in order, those of one day together
     * @param counts which of them count
     */
    static List<MeasuredPull> newest(List<MeasuredPull> pulls, Predicate<MeasuredPull> counts) {
        List<MeasuredPull> newest = new ArrayList<>();
        for (int i = pulls.size() - 1; i >= 0 && newest.size() <= MOST_PULLS; i--) {
            if (counts.test(pulls.get(i))) {
                newest.add(pulls.get(i));
            }
        }
        if (newest.size() > MOST_PULLS) {
            int over = dayOf(newest.get(MOST_PULLS));
            newest.remove(MOST_PULLS);
            if (over != dayOf(newest.get(0))) {
                newest.removeIf(pull -> dayOf(pull) == over);
            }
        }
        Collections.reverse(newest);
        return newest;
    }

    List<SurfacePull> of(List<MeasuredPull> pulls, SpeedRows speeds) {
        List<Integer> days = pulls.stream().map(SurfacePulls::dayOf).distinct().toList();
        Map<Integer, Double> begins =
                pulls.stream().collect(Collectors.toMap(SurfacePulls::dayOf, MeasuredPull::order, Math::min));
        return stretches(pulls).stream()
                .map(stretch -> {
                    MeasuredPull first = stretch.get(0);
                    int day = dayOf(first);
                    return new SurfacePull(
                            days.indexOf(day),
                            first.order() - begins.getOrDefault(day, 0.0),
                            first.isHeld(),
                            readings(stretch, speeds));
                })
                .toList();
    }

    /** Pulls, with those together that are plateaus of one stretch under load. */
    List<List<MeasuredPull>> stretches(List<MeasuredPull> pulls) {
        List<List<MeasuredPull>> stretches = new ArrayList<>();
        for (MeasuredPull pull : pulls) {
            List<MeasuredPull> last = stretches.isEmpty() ? List.of() : stretches.get(stretches.size() - 1);
            if (!last.isEmpty() && isOneStretch(last.get(last.size() - 1), pull)) {
                last.add(pull);
            } else {
                stretches.add(new ArrayList<>(List.of(pull)));
            }
        }
        return stretches;
    }

    private boolean isOneStretch(MeasuredPull before, MeasuredPull pull) {
        if (!before.isHeld() || !pull.isHeld()) {
            return false;
        }
        Figures.AtSpeed one = rowsOf.apply(before).get(0);
        Figures.AtSpeed other = rowsOf.apply(pull).get(0);
        double later = other.heldAtS().orElseThrow() - one.heldAtS().orElseThrow();
        return before.origin().source().equals(pull.origin().source())
                && dayOf(before) == dayOf(pull)
                && one.rpm() == other.rpm()
                && later >= 0
                && later <= ONE_STRETCH_S;
    }

    private List<SurfacePull.Reading> readings(List<MeasuredPull> stretch, SpeedRows speeds) {
        double begin = rowsOf.apply(stretch.get(0)).get(0).heldAtS().orElse(0);
        List<SurfacePull.Reading> readings = new ArrayList<>();
        for (MeasuredPull pull : stretch) {
            Optional<Lambda> lambda = DayReadings.lambda(pull);
            for (Figures.AtSpeed row : rowsOf.apply(pull)) {
                readings.add(new SurfacePull.Reading(
                        speeds.nearest(row.rpm()),
                        row.advance().orElseThrow(),
                        row.lambda().or(() -> lambda),
                        PERCENT * Math.log(row.torque().newtonMetres()),
                        Math.max(0, row.heldAtS().orElse(begin) - begin)));
            }
        }
        return readings;
    }
}
