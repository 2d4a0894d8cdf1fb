package org.nextpull.advice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.channel.SparkMap;
import org.nextpull.fit.PeakMap;
import org.nextpull.fit.SurfacePosterior;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Span;

/** Reads what a day of a map says off its posterior and the planner's answer. */
final class MapReading {
    /** An advance is bracketed where the most advanced clean one lies beyond it with this chance, and the least one before it. */
    private static final double BEYOND = 0.75;

    private final MapDay day;
    private final MapEvidence evidence;
    private final MapAnswer answer;
    private final SparkRules rules;

    MapReading(MapDay day, MapEvidence evidence, MapAnswer answer, SparkRules rules) {
        this.day = day;
        this.evidence = evidence;
        this.answer = answer;
        this.rules = rules;
    }

    MapState state() {
        SurfacePosterior posterior = evidence.posterior();
        List<TriedPull> tried = evidence.pulls();
        return new MapState(
                evidence.present(),
                day.atCells(tried.get(tried.size() - 1).spark()),
                rows(),
                knockLimits(),
                answer.peak().map().orElseThrow(),
                answer.leftAtPeak(),
                answer.least().map().orElseThrow(),
                answer.leftAtLeast(),
                answer.leftByLeave(),
                answer.peak().lambda(),
                posterior.scatterPercent(),
                posterior.driftPercent(posterior.days() - 1));
    }

    private List<MapRow> rows() {
        double[] speeds = day.rows();
        SurfacePosterior posterior = evidence.posterior();
        PeakMap peaks = answer.peak().lambda().map(posterior::peaks).orElseGet(posterior::peaks);
        Exclusions exclusions = new Exclusions(evidence.pulls(), rules, speeds, day.looks(evidence.pulls()));
        SparkMap least = answer.least().map().orElseThrow();
        SparkMap peak = answer.peak().map().orElseThrow();
        List<MapRow> rows = new ArrayList<>();
        for (int r = 0; r < speeds.length; r++) {
            double[] clean = exclusions.cleanDeg(speeds[r]);
            OptionalDouble run = Arrays.stream(clean).max();
            double leastDeg = least.degAt(speeds[r]);
            ChosenBy by = answer.decidedBy().get(r);
            Optional<MapRow.Best> best = run.isEmpty()
                    ? Optional.empty()
                    : by == ChosenBy.PEAK
                            ? free(
                                    new Row(peaks, r, Span.of(clean[0], run.getAsDouble())),
                                    leastDeg,
                                    peak.degAt(speeds[r]) - leastDeg)
                            : held(by, leastDeg, run.getAsDouble());
            rows.add(new MapRow(speeds[r], best, run, by));
        }
        return rows;
    }

    /** A row with the least and the most that clean pulls ran there, degrees. */
    private record Row(PeakMap peaks, int row, Span clean) {
        /** Whether clean pulls surely reach beyond the peak less some degrees, and lie on both sides of it. */
        boolean brackets(double belowPeakDeg) {
            return clean.low() < clean.high()
                    && clean.low() < peaks.mean(row) - belowPeakDeg
                    && peaks.chanceBelow(row, clean.high() + belowPeakDeg) >= BEYOND;
        }
    }

    /** A row that neither knock nor the plan holds. The interval of the best is that of the peak, as far below it as the best is. */
    private static Optional<MapRow.Best> free(Row row, double leastDeg, double below) {
        if (!row.brackets(below)) {
            return Optional.empty();
        }
        Span ninety = row.peaks().ninety(row.row());
        Span interval = Span.of(Math.min(leastDeg, ninety.low() - below), Math.max(leastDeg, ninety.high() - below));
        return Optional.of(new MapRow.Best(
                leastDeg,
                Optional.of(interval),
                row.brackets(0) ? OptionalDouble.of(row.peaks().mean(row.row())) : OptionalDouble.empty()));
    }

    /** A row that knock or the plan holds below its peak: its best is stated once it was run. */
    private Optional<MapRow.Best> held(ChosenBy by, double leastDeg, double runDeg) {
        return by == ChosenBy.HIGHEST_TRIED || runDeg < leastDeg - rules.resolutionDeg()
                ? Optional.empty()
                : Optional.of(new MapRow.Best(leastDeg, Optional.empty(), OptionalDouble.empty()));
    }

    private List<MapState.KnockAtRow> knockLimits() {
        Optional<Lambda> lambda = answer.peak().lambda();
        double[] speeds = day.rows();
        Exclusions exclusions = new Exclusions(evidence.pulls(), rules, speeds, day.looks(evidence.pulls()));
        List<MapState.KnockAtRow> limits = new ArrayList<>();
        for (double rpm : speeds) {
            double lowest = Double.POSITIVE_INFINITY;
            int set = 0;
            for (int i = 0; i < evidence.pulls().size(); i++) {
                TriedPull pull = evidence.pulls().get(i);
                double ban = exclusions.banDeg(rpm, lambda, look -> look.pull().equals(pull));
                if (ban < lowest) {
                    lowest = ban;
                    set = day.counting().get(i).number();
                }
            }
            if (lowest < Double.POSITIVE_INFINITY) {
                limits.add(new MapState.KnockAtRow(rpm, lowest, set));
            }
        }
        return limits;
    }
}
