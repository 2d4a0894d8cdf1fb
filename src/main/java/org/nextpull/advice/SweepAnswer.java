package org.nextpull.advice;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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
        List<FitPoint> curve,
        List<RowOptimum> rows,
        List<OpenRow> openRows,
        boolean rowsProven,
        Optional<MapGain> mapGain,
        List<Integer> outliers) {
    public SweepAnswer {
        pulls = List.copyOf(pulls);
        curve = List.copyOf(curve);
        rows = List.copyOf(rows);
        openRows = List.copyOf(openRows);
        outliers = List.copyOf(outliers);
    }
}
