package org.nextpull.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.nextpull.channel.EngineSetting;
import org.nextpull.math.NormalMixture;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Span;

/** What one setting makes over another on the same engine: the difference of two falls, with its error by their slopes, node by node. */
final class SettingGain {
    /** Nobody knows what lies further than this beside what pulls ran: a step of spark, and one of mixture, as they usually are. */
    private static final double BESIDE_DEG = 2;

    private static final double BESIDE_LAMBDA = 0.034;

    private final SurfacePosterior posterior;

    SettingGain(SurfacePosterior posterior) {
        this.posterior = posterior;
    }

    /** Percent of torque, mean over the rows; empty where no pull ran as far as one of the settings. */
    Optional<PosteriorValue> of(EngineSetting from, EngineSetting to) {
        if (!isRun(from) || !isRun(to)) {
            return Optional.empty();
        }
        ReadingTable both = new ReadingTable(new Surface(
                posterior.rows(),
                List.of(pull(from), pull(to)),
                posterior.surface().priors()));
        Map<SolvedCell, Slope> slopes = new HashMap<>();
        Function<SolvedCell, Slope> slope = cell -> slopes.computeIfAbsent(cell, one -> new Slope(both, one));
        NormalMixture gain = posterior.mixture(
                cell -> slope.apply(cell).gain,
                cell -> Math.sqrt(slope.apply(cell).variance()));
        return Optional.of(
                new PosteriorValue(gain.widened(posterior.surface().priors().limitWidening())));
    }

    private double[] deg(EngineSetting setting) {
        return setting.spark().orElseThrow().degAt(posterior.rows().rpm());
    }

    private SurfacePull pull(EngineSetting setting) {
        double[] deg = deg(setting);
        List<SurfacePull.Reading> readings = new ArrayList<>();
        for (int row = 0; row < deg.length; row++) {
            readings.add(new SurfacePull.Reading(row, Advance.ofDeg(deg[row]), setting.lambda(), 0, 0));
        }
        return new SurfacePull(0, 0, false, readings);
    }

    private boolean isRun(EngineSetting setting) {
        double[] deg = deg(setting);
        boolean hasMixture = posterior.columns().mixture.isPresent();
        return IntStream.range(0, deg.length)
                .allMatch(row -> isWithin(
                                run(
                                        row,
                                        reading -> Optional.of(reading.advance().deg())),
                                deg[row],
                                BESIDE_DEG)
                        && (!hasMixture || isRunLambda(row, setting)));
    }

    private boolean isRunLambda(int row, EngineSetting setting) {
        Optional<Span> run = run(row, reading -> reading.lambda().map(Lambda::value));
        return setting.lambda()
                .filter(lambda -> isWithin(run, lambda.value(), BESIDE_LAMBDA))
                .isPresent();
    }

    private static boolean isWithin(Optional<Span> run, double value, double beside) {
        return run.filter(span -> value >= span.low() - beside && value <= span.high() + beside)
                .isPresent();
    }

    private Optional<Span> run(int row, Function<SurfacePull.Reading, Optional<Double>> value) {
        double[] all = posterior.surface().pulls().stream()
                .flatMap(pull -> pull.readings().stream())
                .filter(reading -> reading.row() == row)
                .flatMap(reading -> value.apply(reading).stream())
                .mapToDouble(Double::doubleValue)
                .toArray();
        return all.length == 0
                ? Optional.empty()
                : Optional.of(Span.of(
                        Arrays.stream(all).min().orElseThrow(),
                        Arrays.stream(all).max().orElseThrow()));
    }

    /** The two falls of one node and their derivatives by its unknowns: common columns first, then the best advance of each row. */
    private final class Slope {
        private final SolvedCell cell;
        private final double[] by;
        private double gain;

        Slope(ReadingTable table, SolvedCell cell) {
            this.cell = cell;
            CommonColumns columns = posterior.columns();
            SurfaceTangent tangent = new SurfaceTangent(table, columns, cell.peak);
            SolverState state = new SolverState(table, columns);
            System.arraycopy(cell.common, 0, state.common, 0, cell.common.length);
            tangent.at(state, cell.node.curvature());
            by = new double[columns.count + table.rowCount];
            for (int k = 0; k < table.count; k++) {
                double share = (k < table.start[1] ? -1.0 : 1.0) / table.rowCount;
                gain -= share * tangent.fall[k];
                by[columns.count + table.row[k]] += share * tangent.byPeak[k];
                for (int j = 0; j < columns.count; j++) {
                    by[j] += share * tangent.byCommon[k * columns.count + j];
                }
            }
        }

        double variance() {
            return cell.variance(by);
        }
    }
}
