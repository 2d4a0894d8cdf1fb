package org.nextpull.compare;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.nextpull.math.Estimate;
import org.nextpull.math.Series;
import org.nextpull.math.regression.Design;
import org.nextpull.math.regression.GroupedFit;
import org.nextpull.math.regression.OutlierWeights;
import org.nextpull.math.regression.ReadingErrors;
import org.nextpull.scatter.Scatter;

/**
 * The model of a day: a level for each label, a scatter for each label, and the drift of {@link DayDrift}. It is worked out in percent of
 * the mean of the reference, since that is what drift and scatter are known in.
 *
 * @param labels all labels of the day, the reference first
 * @param known scatter of each label as other pulls told it; empty where they did not of each
 */
record DayModel(List<String> labels, Map<String, Scatter> known) {
    /** Pull-to-pull scatter as it usually is, in percent (common practice, no source); known within a factor of two. */
    private static final double USUAL_PERCENT = 0.3;

    private static final double USUAL_FREEDOM = 1.5;
    private static final double WARM_UP_SHOWS = 0.01;
    private static final double LAST_FIRST_ORDER = 1.5;
    private static final int FREEDOM_BESIDE_WARM_UP = 5;

    DayModel {
        labels = List.copyOf(labels);
        known = known.keySet().containsAll(labels) ? Map.copyOf(known) : Map.of();
    }

    /** The day as its pulls tell it, at least two of each label. */
    DayFit fit(List<ComparedPull> pulls) {
        double unit = pulls.stream()
                        .filter(pull -> pull.label().equals(labels.get(0)))
                        .mapToDouble(ComparedPull::value)
                        .average()
                        .orElseThrow()
                / 100;
        Series percents = Series.of(pulls.stream().mapToDouble(pull -> pull.value() / unit));
        Series orders = Series.of(pulls.stream().mapToDouble(ComparedPull::order));
        List<String> ran = pulls.stream().map(ComparedPull::label).toList();
        List<Integer> days = pulls.stream().map(ComparedPull::day).toList();
        Design design = design(ran);
        boolean warmUp = pulls.size() >= labels.size() + FREEDOM_BESIDE_WARM_UP
                && orders.min() <= LAST_FIRST_ORDER
                && fit(design.with(DayDrift.straight(orders).column()), percents, errors(ran, orders, days, false))
                                .pOfLacking(DayDrift.warmUp(orders).column())
                        < WARM_UP_SHOWS;
        ReadingErrors errors = errors(ran, orders, days, warmUp);
        Series weights = OutlierWeights.of(design, percents, errors).orElseThrow();
        return new DayFit(this, orders, unit, warmUp, fit(design, percents, errors.withWeights(weights)));
    }

    private static GroupedFit fit(Design design, Series percents, ReadingErrors errors) {
        return GroupedFit.fit(design, percents, errors).orElseThrow();
    }

    /**
     * The differences from the reference, in percent, as they will come out on average if there are none; one a label after the first.
     *
     * @param ran label of each pull
     * @param orders place of each pull in the day
     * @param scatters of a pull of each label
     */
    List<Estimate> expected(List<String> ran, Series orders, LabelScatters scatters) {
        GroupedFit fit = GroupedFit.expected(
                        design(ran),
                        errors(ran, orders, Collections.nCopies(ran.size(), 0), false),
                        Series.of(labels.stream().mapToDouble(scatters::variance)))
                .orElseThrow();
        return IntStream.range(1, labels.size())
                .mapToObj(label -> fit.estimate(Series.generate(labels.size(), index -> index == label ? 1 : 0)))
                .toList();
    }

    private ReadingErrors errors(List<String> ran, Series orders, List<Integer> days, boolean warmUp) {
        return new ReadingErrors(
                DayDrift.squarePercent(orders, days, warmUp),
                ran.stream().map(labels::indexOf).toList(),
                Series.constant(ran.size(), 1),
                Optional.of(new ReadingErrors.VariancePart(USUAL_PERCENT * USUAL_PERCENT, USUAL_FREEDOM)),
                labels.stream()
                        .flatMap(label -> Optional.ofNullable(known.get(label)).stream())
                        .map(DayModel::part)
                        .toList(),
                DayDrift.ALLOWANCE);
    }

    private static ReadingErrors.VariancePart part(Scatter scatter) {
        return new ReadingErrors.VariancePart(scatter.percent() * scatter.percent(), scatter.degreesOfFreedom());
    }

    /** Columns: labels after the reference. */
    private Design design(List<String> ran) {
        List<Series> columns = new ArrayList<>();
        for (String label : labels.subList(1, labels.size())) {
            columns.add(Series.of(ran.stream().mapToDouble(own -> own.equals(label) ? 1 : 0)));
        }
        return Design.withIntercept(columns.toArray(Series[]::new));
    }
}
