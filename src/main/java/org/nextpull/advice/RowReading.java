package org.nextpull.advice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.channel.SparkMap;
import org.nextpull.fit.PeakMap;
import org.nextpull.fit.SurfacePosterior;
import org.nextpull.plan.Goal;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Span;

/** Reads what each speed of a day says off its posterior and the planner's answer. */
final class RowReading {
    /** An advance is bracketed where the most advanced clean one lies beyond it with this chance, and the least one before it. */
    private static final double BEYOND = 0.75;
    /** An interval that is stated without a pull of the map is asked for more. */
    private static final double SURELY_BEYOND = 0.95;
    /** Knock holds a row this far below its best, degrees. */
    private static final double CAP_BITES_DEG = 0.75;

    private final DayReadings day;
    private final DayEvidence evidence;
    private final Exclusions exclusions;
    private final double[] speeds;

    RowReading(DayReadings day, DayEvidence evidence, Exclusions exclusions) {
        this.day = day;
        this.evidence = evidence;
        this.exclusions = exclusions;
        speeds = day.rows();
    }

    /** A row with the least and the most that clean pulls ran there, degrees. */
    private record Row(PeakMap peaks, int row, Span clean, double chance) {
        /** Whether clean pulls surely reach beyond the peak less some degrees, and lie on both sides of it. */
        boolean brackets(double belowPeakDeg) {
            return clean.low() < clean.high()
                    && clean.low() < peaks.mean(row) - belowPeakDeg
                    && peaks.chanceBelow(row, clean.high() + belowPeakDeg) >= chance;
        }
    }

    /** The speeds of a map. */
    List<AnswerRow> ofMap(PlannerDecision.Answer answer) {
        PeakMap peaks = peaks(evidence.posterior(), answer.peak().lambda());
        SparkMap least = answer.least().spark().orElseThrow();
        SparkMap peak = answer.peak().spark().orElseThrow();
        List<AnswerRow> rows = new ArrayList<>();
        for (int r = 0; r < speeds.length; r++) {
            double[] clean = exclusions.cleanDeg(speeds[r]);
            OptionalDouble run = Arrays.stream(clean).max();
            double leastDeg = least.degAt(speeds[r]);
            ChosenBy by = answer.decidedBy().get(r);
            Optional<AnswerRow.Best> best = run.isEmpty()
                    ? Optional.empty()
                    : by == ChosenBy.PEAK
                            ? free(
                                    new Row(peaks, r, Span.of(clean[0], run.getAsDouble()), BEYOND),
                                    peaks,
                                    leastDeg,
                                    peak.degAt(speeds[r]) - leastDeg)
                            : held(by, leastDeg, run.getAsDouble());
            rows.add(new AnswerRow(speeds[r], best, run, by));
        }
        return rows;
    }

    /** The speeds of an ignition that takes one number, as each would have its own: only where pulls bracket the peak there. */
    List<AnswerRow> flat(PlannerDecision.Answer answer, Goal goal, SurfacePosterior drifting) {
        Optional<Lambda> lambda = answer.peak().lambda();
        PeakMap peaks = peaks(evidence.posterior(), lambda);
        PeakMap others = peaks(drifting, lambda);
        double[] least = FactorReading.leastByRow(evidence.posterior(), lambda, goal.nearBestPercent());
        List<AnswerRow> rows = new ArrayList<>();
        for (int r = 0; r < speeds.length; r++) {
            double[] clean = exclusions.cleanDeg(speeds[r]);
            OptionalDouble run = Arrays.stream(clean).max();
            boolean isFree = run.isPresent() && peaks.mean(r) <= answer.caps().deg(r) + CAP_BITES_DEG;
            double deg = day.grid().down(Math.min(least[r], run.orElse(least[r])));
            Optional<AnswerRow.Best> best = isFree
                    ? free(
                            new Row(peaks, r, Span.of(clean[0], run.getAsDouble()), SURELY_BEYOND),
                            others,
                            deg,
                            peaks.mean(r) - deg)
                    : Optional.empty();
            rows.add(new AnswerRow(speeds[r], best, run, isFree ? ChosenBy.PEAK : ChosenBy.KNOCK_LIMIT));
        }
        return rows;
    }

    private static PeakMap peaks(SurfacePosterior posterior, Optional<Lambda> lambda) {
        return lambda.map(posterior::peaks).orElseGet(posterior::peaks);
    }

    /** A row that neither knock nor the plan holds. The interval of the best is that of the peak, as far below it as the best is. */
    private static Optional<AnswerRow.Best> free(Row row, PeakMap others, double leastDeg, double below) {
        if (!row.brackets(below)) {
            return Optional.empty();
        }
        Span one = row.peaks().ninety(row.row());
        Span other = others.ninety(row.row());
        Span interval = Span.of(
                Math.min(leastDeg, Math.min(one.low(), other.low()) - below),
                Math.max(leastDeg, Math.max(one.high(), other.high()) - below));
        return Optional.of(new AnswerRow.Best(
                leastDeg,
                Optional.of(interval),
                row.brackets(0) ? OptionalDouble.of(row.peaks().mean(row.row())) : OptionalDouble.empty()));
    }

    /** A row that knock or the plan holds below its peak: its best is stated once it was run. */
    private Optional<AnswerRow.Best> held(ChosenBy by, double leastDeg, double runDeg) {
        return by == ChosenBy.HIGHEST_TRIED || runDeg < leastDeg - day.plan().resolutionDeg()
                ? Optional.empty()
                : Optional.of(new AnswerRow.Best(leastDeg, Optional.empty(), OptionalDouble.empty()));
    }
}
