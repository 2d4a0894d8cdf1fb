package org.nextpull.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.channel.SparkMap;
import org.nextpull.fit.PeakMap;
import org.nextpull.fit.SurfacePosterior;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Span;

/** Reads what a day of a map says off its posterior and the planner's answer. */
final class MapReading {
    /** A peak is bracketed where the most advanced clean advance lies beyond it with this chance, and the least one before it. */
    private static final double BEYOND = 0.75;

    private final MapDay day;
    private final MapEvidence evidence;
    private final MapAnswer answer;
    private final SparkRules rules;
    private final List<MeasuredPull> here;

    MapReading(MapDay day, MapEvidence evidence, MapAnswer answer, SparkRules rules, List<MeasuredPull> here) {
        this.day = day;
        this.evidence = evidence;
        this.answer = answer;
        this.rules = rules;
        this.here = here;
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
                answer.peak().lambda(),
                posterior.scatterPercent(),
                posterior.driftPercent(0));
    }

    private List<MapRow> rows() {
        double[] speeds = day.rows();
        SurfacePosterior posterior = evidence.posterior();
        PeakMap peaks = answer.peak().lambda().map(posterior::peaks).orElseGet(posterior::peaks);
        Exclusions exclusions =
                new Exclusions(evidence.pulls(), rules, speeds, new FlagLooks(evidence.pulls(), false));
        SparkMap least = answer.least().map().orElseThrow();
        SparkMap peak = answer.peak().map().orElseThrow();
        List<MapRow> rows = new ArrayList<>();
        for (int r = 0; r < speeds.length; r++) {
            double[] clean = exclusions.cleanDeg(speeds[r]);
            ChosenBy by = answer.decidedBy().get(r);
            double leastDeg = least.degAt(speeds[r]);
            double below = peak.degAt(speeds[r]) - leastDeg;
            Optional<MapRow.Peak> found = by == ChosenBy.PEAK && isBracketed(peaks, r, clean)
                    ? Optional.of(peak(peaks, r, leastDeg, below))
                    : Optional.empty();
            boolean isHeld = by == ChosenBy.KNOCK_LIMIT || by == ChosenBy.PLAN_LIMIT;
            boolean isRun = clean.length > 0 && clean[clean.length - 1] >= leastDeg - rules.resolutionDeg();
            rows.add(new MapRow(
                    speeds[r],
                    found.isPresent() || (isHeld && isRun)
                            ? Optional.of(new MapRow.Best(leastDeg, found))
                            : Optional.empty(),
                    clean.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(clean[clean.length - 1]),
                    by));
        }
        return rows;
    }

    private static boolean isBracketed(PeakMap peaks, int row, double[] clean) {
        return clean.length > 1
                && clean[0] < peaks.mean(row)
                && peaks.chanceBelow(row, clean[clean.length - 1]) >= BEYOND;
    }

    /** The interval of the best advance is that of the peak, as far below it as the best is. */
    private static MapRow.Peak peak(PeakMap peaks, int row, double leastDeg, double below) {
        Span ninety = peaks.ninety(row);
        return new MapRow.Peak(
                peaks.mean(row),
                Span.of(Math.min(leastDeg, ninety.low() - below), Math.max(leastDeg, ninety.high() - below)));
    }

    private List<MapState.KnockAtRow> knockLimits() {
        Optional<Lambda> lambda = answer.peak().lambda();
        double[] speeds = day.rows();
        List<MapState.KnockAtRow> limits = new ArrayList<>();
        for (double rpm : speeds) {
            double lowest = Double.POSITIVE_INFINITY;
            int set = 0;
            for (int i = 0; i < evidence.pulls().size(); i++) {
                List<TriedPull> one = List.of(evidence.pulls().get(i));
                double ban = new Exclusions(one, rules, speeds, new FlagLooks(one, false)).banDeg(rpm, lambda);
                if (ban < lowest) {
                    lowest = ban;
                    set = here.get(i).number();
                }
            }
            if (lowest < Double.POSITIVE_INFINITY) {
                limits.add(new MapState.KnockAtRow(rpm, lowest, set));
            }
        }
        return limits;
    }
}
