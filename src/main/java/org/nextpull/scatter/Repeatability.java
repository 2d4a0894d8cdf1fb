package org.nextpull.scatter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.math.Estimate;
import org.nextpull.math.Series;
import org.nextpull.math.regression.Design;
import org.nextpull.math.regression.FitResult;
import org.nextpull.math.regression.LeastSquares;
import org.nextpull.response.Reading;

/**
 * What the repeats of a day say: scatter and drift from settings that were run again, by an additive model of the logarithm of the
 * response with one level a setting and one slope over the day (analysis of covariance; Snedecor and Cochran, Statistical Methods,
 * chapter 18). The slope is fitted only where a setting was repeated with another setting between, since otherwise drift and difference
 * cannot be told apart. A setting of another day is another: days differ by more than pulls do.
 *
 * @param scatter from settings that were remade, after drift; empty without repeats
 * @param drift only where a setting was repeated apart in time
 * @param repeats the groups of pulls that it rests on
 */
public record Repeatability(Optional<Scatter> scatter, Optional<Drift> drift, List<Group> repeats) {
    /** Degrees of freedom that must be left for a drift to be told from scatter. */
    private static final int LEAST_FREEDOM_BESIDE_DRIFT = 2;

    public Repeatability {
        repeats = List.copyOf(repeats);
    }

    public static Repeatability unknown() {
        return new Repeatability(Optional.empty(), Optional.empty(), List.of());
    }

    /**
     * Estimates from the readings of a day.
     *
     * @param readings the pulls that count, in the order of the day
     * @param same when two settings are one
     */
    public static Repeatability of(List<Reading> readings, SameSetting same) {
        List<List<Reading>> groups = groups(readings, same);
        if (groups.isEmpty()) {
            return unknown();
        }
        List<Group> repeats = groups.stream()
                .map(group -> new Group(
                        group.stream().map(reading -> reading.pull().number()).toList()))
                .toList();
        int total = groups.stream().mapToInt(List::size).sum();
        int freedom = total - groups.size();
        boolean driftTold =
                groups.stream().anyMatch(Repeatability::isRepeatedApart) && freedom - 1 >= LEAST_FREEDOM_BESIDE_DRIFT;
        if (driftTold) {
            FitResult<LeastSquares.LinearFit> fit = LeastSquares.fit(withDrift(groups), logResponses(groups));
            if (fit instanceof FitResult.Fitted<LeastSquares.LinearFit> fitted) {
                LeastSquares.LinearFit line = fitted.fit();
                Estimate slope = line.estimate(groups.size());
                return new Repeatability(
                        Optional.of(new Scatter(line.residualSd(), freedom - 1)),
                        Optional.of(new Drift(slope.value(), slope.standardError())),
                        repeats);
            }
        }
        return new Repeatability(
                Optional.of(new Scatter(withinGroups(groups, freedom), freedom)), Optional.empty(), repeats);
    }

    private static List<List<Reading>> groups(List<Reading> readings, SameSetting same) {
        List<List<Reading>> groups = new ArrayList<>();
        for (Reading reading : readings) {
            groups.stream()
                    .filter(group -> group.get(0).pull().origin().day()
                                    == reading.pull().origin().day()
                            && same.matches(group.get(0).pull(), reading.pull()))
                    .findFirst()
                    .orElseGet(() -> {
                        List<Reading> fresh = new ArrayList<>();
                        groups.add(fresh);
                        return fresh;
                    })
                    .add(reading);
        }
        return groups.stream().filter(group -> group.size() > 1).toList();
    }

    private static boolean isRepeatedApart(List<Reading> group) {
        for (int later = 1; later < group.size(); later++) {
            if (group.get(later).pull().order() - group.get(later - 1).pull().order() > 1.5) {
                return true;
            }
        }
        return false;
    }

    private static Design withDrift(List<List<Reading>> groups) {
        List<Series> columns = new ArrayList<>();
        for (List<Reading> wanted : groups) {
            columns.add(Series.of(
                    groups.stream().flatMap(List::stream).mapToDouble(reading -> wanted.contains(reading) ? 1 : 0)));
        }
        columns.add(Series.of(groups.stream()
                .flatMap(List::stream)
                .mapToDouble(reading -> reading.pull().order())));
        return Design.withoutIntercept(columns.toArray(Series[]::new));
    }

    private static Series logResponses(List<List<Reading>> groups) {
        return Series.of(groups.stream().flatMap(List::stream).mapToDouble(Repeatability::percent));
    }

    private static double withinGroups(List<List<Reading>> groups, int freedom) {
        double sum = groups.stream()
                .mapToDouble(group -> Series.of(group.stream().mapToDouble(Repeatability::percent))
                        .sumOfSquaredDeviations())
                .sum();
        return Math.sqrt(sum / freedom);
    }

    /** Differences of this are percent of the level. */
    private static double percent(Reading reading) {
        return 100 * Math.log(reading.value());
    }

    /**
     * Pulls that were run with one setting.
     *
     * @param pulls their numbers, two or more, in order
     */
    public record Group(List<Integer> pulls) {
        public Group {
            pulls = List.copyOf(pulls);
        }
    }

    /**
     * Slow change over the day that no setting explains.
     *
     * @param percentPerPull change of the response a pull, in percent of the level
     * @param standardError its standard error, in the same unit
     */
    public record Drift(double percentPerPull, double standardError) {}
}
