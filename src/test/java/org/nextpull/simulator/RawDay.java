package org.nextpull.simulator;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.nextpull.advice.Action;
import org.nextpull.advice.AnswerRow;
import org.nextpull.advice.Chosen;
import org.nextpull.advice.ChosenBy;
import org.nextpull.advice.MapState;
import org.nextpull.advice.SweepAnswer;
import org.nextpull.advice.Verdict;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.Role;
import org.nextpull.channel.SparkMap;
import org.nextpull.engine.OperatingPoint;
import org.nextpull.engine.bench.FullLoadCurve;
import org.nextpull.engine.bench.TruthFinder;
import org.nextpull.plan.SweepPlan;
import org.nextpull.response.Figures;
import org.nextpull.response.KnockHeard;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Span;

/**
 * A whole day on a model engine, from raw logs through the session with a plan's own defaults, beside the truth.
 *
 * @param pulls pulls, the one that proves included
 * @param knocking pulls in which the sensor heard knock, in the band or beside it
 * @param answered whether the day ended with a setting to leave
 * @param leftPercent torque that this setting leaves of what the engine permits, %; at 100 where there is none
 * @param leftAtPeakPercent the same at the stated setting of most torque
 * @param rowsHeld share of printed 90 % row intervals that hold the least advance within 0.2 % of the top of that speed
 * @param rowsPrinted speeds with an interval
 */
record RawDay(
        int pulls,
        int knocking,
        boolean answered,
        double leftPercent,
        double leftAtPeakPercent,
        double rowsHeld,
        int rowsPrinted) {
    private static final int MOST_PULLS = 40;
    /** Integral at which an accelerating pull is expected to knock about once in 250 rpm. */
    private static final double ONSET = 0.89;

    private static final double NEAR = 0.998;
    private static final double STEP_DEG = 2;
    private static final double CELL_RPM = 500;

    /** The day as the program leads it. */
    static RawDay led(SweepPlan plan, long seed) {
        Practice day = start(plan, seed);
        while (day.advice().action() != Action.STOP && day.pulls() < MOST_PULLS) {
            Optional<EngineSetting> setting = day.advice().setting();
            if (setting.isEmpty() || day.pull(setting.get()).isFailed()) {
                break;
            }
        }
        return of(day, day.advice().leave().map(Chosen::setting));
    }

    /** The trade's rule: 2 deg more everywhere until the mean torque has fallen twice, then the best; 2 deg back from knock. */
    static RawDay byTheRule(SweepPlan plan, long seed) {
        Practice day = start(plan, seed);
        double deg = plan.timing().orElseThrow().start().deg();
        double best = Double.NEGATIVE_INFINITY;
        double bestDeg = deg;
        int falls = 0;
        while (falls < 2 && day.pulls() < MOST_PULLS) {
            MeasuredPull pull = run(day, flat(deg));
            double torque =
                    Arrays.stream(torques(pull, day.rig().band())).average().orElse(Double.NEGATIVE_INFINITY);
            if (pull.knock().isHeard()) {
                bestDeg = Math.min(bestDeg, deg - STEP_DEG);
                break;
            }
            falls = torque > best ? 0 : falls + 1;
            if (torque > best) {
                best = torque;
                bestDeg = deg;
            }
            deg += STEP_DEG;
        }
        run(day, flat(bestDeg));
        return of(day, Optional.of(flat(bestDeg)));
    }

    /** A good tuner: every cell goes on by 2 deg until its own torque has fallen twice, and back by 2 deg where it knocked. */
    static RawDay byAGoodTuner(SweepPlan plan, long seed) {
        Practice day = start(plan, seed);
        Span band = day.rig().band();
        int count = (int) Math.ceil(band.width() / CELL_RPM) + 1;
        double[] rpm = new double[count];
        double[] deg = new double[count];
        Cell[] cells = new Cell[count];
        for (int cell = 0; cell < count; cell++) {
            rpm[cell] = band.low() + cell * CELL_RPM;
            deg[cell] = day.rig().spark(day.advice().setting().orElseThrow()).degAt(rpm[cell]);
            cells[cell] = new Cell(deg[cell]);
        }
        while (Arrays.stream(cells).anyMatch(cell -> !cell.done) && day.pulls() < MOST_PULLS) {
            MeasuredPull pull = run(day, map(rpm, deg));
            for (int cell = 0; cell < count; cell++) {
                Span near = Span.of(rpm[cell] - CELL_RPM / 2, rpm[cell] + CELL_RPM / 2);
                boolean knocked = pull.knock().at().stream()
                        .map(KnockHeard.KnockAt::rpm)
                        .anyMatch(at -> at.isPresent() && near.contains(at.getAsDouble()));
                double torque = Arrays.stream(torques(pull, near)).average().orElse(0);
                deg[cell] = cells[cell].next(deg[cell], torque, knocked);
            }
        }
        run(day, map(rpm, deg));
        return of(day, Optional.of(map(rpm, deg)));
    }

    private static final class Cell {
        private double best = Double.NEGATIVE_INFINITY;
        private double bestDeg;
        private int falls;
        private boolean done;

        Cell(double startDeg) {
            bestDeg = startDeg;
        }

        double next(double deg, double torque, boolean knocked) {
            if (knocked) {
                done = true;
                bestDeg = Math.min(bestDeg, deg - STEP_DEG);
            } else if (!done) {
                falls = torque > best ? 0 : falls + 1;
                bestDeg = torque > best ? deg : bestDeg;
                best = Math.max(best, torque);
                done = falls == 2;
            }
            return done ? bestDeg : deg + STEP_DEG;
        }
    }

    private static Practice start(SweepPlan plan, long seed) {
        boolean graded = plan.limits().knockLevel().isPresent();
        return SimulatedEngine.of(plan, seed)
                .map(rig -> graded ? rig.withKit(rig.kit().logging(Set.of(Role.KNOCK_LEVEL))) : rig)
                .map(Practice::on)
                .value()
                .orElseThrow();
    }

    private static MeasuredPull run(Practice day, EngineSetting setting) {
        assertThat(day.run(setting, Optional.empty()).isFailed()).isFalse();
        day.judge();
        List<MeasuredPull> pulls = day.result().pulls();
        return pulls.get(pulls.size() - 1);
    }

    private static double[] torques(MeasuredPull pull, Span speeds) {
        return pull.figures().map(Figures::rows).orElse(List.of()).stream()
                .filter(row -> speeds.contains(row.rpm()))
                .map(Figures.AtSpeed::torque)
                .mapToDouble(torque -> torque.newtonMetres())
                .toArray();
    }

    private static EngineSetting flat(double deg) {
        return EngineSetting.ofNumbers(Optional.of(Advance.ofDeg(deg)), Optional.empty(), Optional.empty());
    }

    private static EngineSetting map(double[] rpm, double[] deg) {
        return EngineSetting.of(SparkMap.of(rpm, deg), Optional.empty());
    }

    private static RawDay of(Practice day, Optional<EngineSetting> leave) {
        int knocking = (int) day.result().pulls().stream()
                .filter(pull -> pull.knock().isHeard())
                .count();
        Best best = new Best(day.rig());
        Optional<Verdict> verdict = day.result().verdict();
        Optional<MapState> state = verdict.flatMap(Verdict::map);
        List<AnswerRow> rows = state.map(MapState::rows).orElse(List.of()).stream()
                .filter(row -> row.by() == ChosenBy.PEAK
                        && row.answer().flatMap(AnswerRow.Best::interval).isPresent())
                .toList();
        long held = rows.stream()
                .filter(row -> row.answer()
                        .flatMap(AnswerRow.Best::interval)
                        .orElseThrow()
                        .contains(best.nearDeg(row.rpm())))
                .count();
        Optional<EngineSetting> peak = state.map(found -> EngineSetting.of(found.peak(), found.lambda()))
                .or(() -> verdict.flatMap(Verdict::timing)
                        .flatMap(SweepAnswer::optimum)
                        .map(found -> flat(found.peak())));
        return new RawDay(
                day.pulls(),
                knocking,
                leave.isPresent(),
                leave.map(best::leftPercent).orElse(100.0),
                peak.or(() -> leave).map(best::leftPercent).orElse(100.0),
                rows.isEmpty() ? 0 : held / (double) rows.size(),
                rows.size());
    }

    /** What the engine would give at best, asked directly: at each speed its top, or where it begins to knock. */
    private static final class Best {
        private final SimulatedEngine rig;
        private final TruthFinder.Truth truth;
        private final Lambda lambda;
        private final double torque;

        Best(SimulatedEngine rig) {
            this.rig = rig;
            this.lambda = rig.plan().mixture().isPresent() ? rig.truth().mixture() : rig.startLambda();
            this.truth = TruthFinder.find(
                    rig.engine(),
                    point(lambda),
                    rig.band(),
                    rig.plan().band().orElseThrow().rowsEveryRpm());
            this.torque = mean(permitted(), lambda);
        }

        private OperatingPoint point(Lambda mixture) {
            return new OperatingPoint(
                    rig.band().low(),
                    Advance.ofDeg(0),
                    mixture,
                    rig.fuel(),
                    rig.day().settled());
        }

        /** The best spark that the plan could set: one number, or one at each speed. */
        private SparkMap permitted() {
            if (rig.plan().timing().isEmpty()) {
                return SparkMap.flat(rig.presentMapDeg());
            }
            double most = rig.plan().timing().orElseThrow().most().deg();
            if (!rig.setsMap()) {
                double onset = truth.onset().orElse(most);
                return SparkMap.flat(Math.min(most, Math.min(truth.peak().deg(), onset)));
            }
            List<SparkMap.Cell> nodes = new ArrayList<>();
            for (TruthFinder.Truth.Row row : truth.rows()) {
                double onset = onset(row.rpm()).orElse(most);
                double deg = Math.min(most, Math.min(row.peak().deg(), onset));
                nodes.add(new SparkMap.Cell(row.rpm(), Advance.ofDeg(deg)));
            }
            return new SparkMap(nodes);
        }

        private OptionalDouble onset(double rpm) {
            double low = 0;
            double high = 45;
            if (knock(rpm, high) < ONSET) {
                return OptionalDouble.empty();
            }
            while (high - low > 0.05) {
                double middle = (low + high) / 2;
                if (knock(rpm, middle) < ONSET) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            return OptionalDouble.of(low);
        }

        private double knock(double rpm, double deg) {
            return rig.engine()
                    .at(point(lambda).atRpm(rpm).atAdvance(deg))
                    .value()
                    .orElseThrow()
                    .knock()
                    .integral();
        }

        private double torque(double rpm, double deg) {
            return rig.engine()
                    .at(point(lambda).atRpm(rpm).atAdvance(deg))
                    .value()
                    .orElseThrow()
                    .torque()
                    .newtonMetres();
        }

        double nearDeg(double rpm) {
            double high = truth.rows().stream()
                    .filter(row -> row.rpm() == rpm)
                    .findFirst()
                    .orElseThrow()
                    .peak()
                    .deg();
            double low = high - 15;
            double wanted = NEAR * torque(rpm, high);
            while (high - low > 0.02) {
                double middle = (low + high) / 2;
                if (torque(rpm, middle) >= wanted) {
                    high = middle;
                } else {
                    low = middle;
                }
            }
            return high;
        }

        double leftPercent(EngineSetting setting) {
            return 100 * (1 - mean(rig.spark(setting), rig.lambda(setting)) / torque);
        }

        private double mean(SparkMap spark, Lambda mixture) {
            return FullLoadCurve.of(rig.engine(), spark, point(mixture), rig.band())
                    .value()
                    .orElseThrow()
                    .meanTorque(rig.band());
        }
    }
}
