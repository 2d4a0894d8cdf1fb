package org.nextpull.advice;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.finding.WrittenId;
import org.nextpull.unit.Span;

/**
 * What a sweep says.
 *
 * @param factor what it varied
 * @param pulls numbers of the pulls in it
 * @param bracketed whether clean settings lie on both sides of the most likely peak and reach, with 95 % probability, to what is near
 *     enough to it to know the least setting that is good enough
 * @param optimum only when bracketed, and when neither knock nor the plan's limit is likely to lie below the peak
 * @param capped when one of these lies below the peak: likely where that is bracketed, with 95 % probability where it is not
 * @param limit setting that knock leaves: heard, less the plan's margin
 * @param edges rich and lean edge of the mixture, where the response is the near-best share below the peak
 * @param curve the fitted curve over the settings that were run
 * @param rows best advance of each row; empty for mixture
 * @param openRows rows of the band that have none, and why
 * @param rowsProven whether a pull with the row table confirmed it
 * @param mapGain what each speed at its own best would gain over the number that stays; empty for mixture, and where there is one speed
 * @param outliers numbers of the pulls whose weight is below 0.4; they stay in the fit with that weight
 */
public record SweepAnswer(
        Factor factor,
        List<Integer> pulls,
        boolean bracketed,
        Optional<Optimum> optimum,
        Optional<Capped> capped,
        OptionalDouble limit,
        Optional<Span> edges,
        FittedCurve curve,
        List<RowOptimum> rows,
        List<OpenRow> openRows,
        boolean rowsProven,
        Optional<MapState.Gain> mapGain,
        List<Integer> outliers) {
    public SweepAnswer {
        pulls = List.copyOf(pulls);
        rows = List.copyOf(rows);
        openRows = List.copyOf(openRows);
        outliers = List.copyOf(outliers);
    }

    /**
     * The best that knock or the plan permits, where the peak lies beyond it: no optimum, and without an interval.
     *
     * @param best the least setting that is as good as the best permitted one, rounded toward retard or rich
     * @param by what caps it: knock, or the plan's limit
     * @param response fitted response there: N.m, or W where power is fitted
     */
    public record Capped(double best, ChosenBy by, OptionalDouble response) {}

    /**
     * Best-torque advance of one row, never beyond the advance that was run in it.
     *
     * @param rpm speed of the row
     * @param bestDeg least advance that is as good as the best, rounded toward retard
     * @param intervalDeg 90 % interval of it, as wide as flat tops and drift ask for; each row's interval stands on its own
     */
    public record RowOptimum(double rpm, double bestDeg, Span intervalDeg) {}

    /**
     * A row of the band for which no best advance is stated.
     *
     * @param rpm speed of the row
     * @param why why not
     */
    public record OpenRow(double rpm, Why why) {

        /** Why nothing is stated. */
        public enum Why implements WrittenId {
            /** Fewer than three pulls measured it. */
            TOO_FEW_PULLS,
            /** Its own pulls do not bracket its peak. */
            NOT_BRACKETED;
        }
    }
}
