package org.nextpull.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.nextpull.fit.RowFit;
import org.nextpull.fit.RowFits;
import org.nextpull.fit.RowSweep;
import org.nextpull.fit.SweepPoint;
import org.nextpull.fit.SweepPosterior;
import org.nextpull.response.Figures;
import org.nextpull.response.MeasuredPull;
import org.nextpull.response.RowFigure;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Span;

/**
 * The best advance of each row of a timing sweep. A row is stated only where its own pulls bracket it, and never beyond the advance
 * that was run in it.
 */
final class RowAnswers {
    private final Axis axis;
    private final double ceiling;
    private final List<MeasuredPull> pulls;

    /**
     * Rows of a sweep.
     *
     * @param question the sweep
     * @param clean the pulls of it in which nothing was met
     */
    RowAnswers(SweepJudge.Question question, List<MeasuredPull> clean) {
        this.axis = question.axis();
        this.ceiling = question.ceiling();
        this.pulls = clean;
    }

    /**
     * The rows that are stated.
     *
     * @param widening how much further the printed intervals reach than by the fit alone, below (negative) and above
     */
    List<RowOptimum> rows(SweepPosterior band, Span widening) {
        Map<Double, List<SweepPoint>> byRow = byRow();
        return fits(band).stream()
                .filter(RowFit::isBracketed)
                .map(fit -> optimum(fit, byRow.getOrDefault(fit.rpm(), List.of()), widening))
                .toList();
    }

    /** The rows of the band that {@link #rows} leaves out. */
    List<OpenRow> open(SweepPosterior band) {
        Map<Double, RowFit> fits = new TreeMap<>();
        fits(band).forEach(fit -> fits.put(fit.rpm(), fit));
        return pulls.stream()
                .flatMap(pull -> pull.figures().map(Figures::rows).orElse(List.of()).stream())
                .map(RowFigure::rpm)
                .distinct()
                .sorted()
                .filter(rpm -> !fits.containsKey(rpm) || !fits.get(rpm).isBracketed())
                .map(rpm ->
                        new OpenRow(rpm, fits.containsKey(rpm) ? OpenRow.Why.NOT_BRACKETED : OpenRow.Why.TOO_FEW_PULLS))
                .toList();
    }

    private List<RowFit> fits(SweepPosterior band) {
        return RowFits.of(
                band,
                byRow().entrySet().stream()
                        .map(row -> new RowSweep(row.getKey(), row.getValue()))
                        .toList());
    }

    private Map<Double, List<SweepPoint>> byRow() {
        Map<Double, List<SweepPoint>> byRow = new TreeMap<>();
        for (MeasuredPull pull : pulls) {
            for (RowFigure row : pull.figures().map(Figures::rows).orElse(List.of())) {
                point(pull, row)
                        .ifPresent(point -> byRow.computeIfAbsent(row.rpm(), rpm -> new ArrayList<>())
                                .add(point));
            }
        }
        return byRow;
    }

    private Optional<SweepPoint> point(MeasuredPull pull, RowFigure row) {
        Optional<Double> setting =
                axis.kind() == Axis.Kind.FLAT_ADVANCE ? row.advance().map(Advance::deg) : Optional.empty();
        Optional<Double> run = setting.or(() -> axis.of(pull).stream().boxed().findFirst());
        double torque = row.torque().newtonMetres();
        return torque > 0
                ? run.map(value -> new SweepPoint(value, torque, pull.number(), pull.order()))
                : Optional.empty();
    }

    private RowOptimum optimum(RowFit fit, List<SweepPoint> points, Span widening) {
        double most = points.stream()
                .map(SweepPoint::setting)
                .max(Comparator.naturalOrder())
                .orElse(axis.start());
        double best = axis.round(Math.min(Math.min(fit.least().centre(), most), ceiling));
        Span ninety = fit.ninety();
        return new RowOptimum(fit.rpm(), best, Span.of(ninety.low() + widening.low(), ninety.high() + widening.high()));
    }

    /** Whether a pull ran every row within one resolution of its best. */
    boolean areProven(List<RowOptimum> rows) {
        return !rows.isEmpty() && pulls.stream().anyMatch(pull -> ran(pull, rows));
    }

    private boolean ran(MeasuredPull pull, List<RowOptimum> rows) {
        List<RowFigure> run = pull.figures().map(Figures::rows).orElse(List.of());
        return rows.stream()
                .allMatch(row -> run.stream()
                        .filter(figure -> figure.rpm() == row.rpm())
                        .flatMap(figure -> figure.advance().stream())
                        .anyMatch(advance -> Math.abs(advance.deg() - row.bestDeg())
                                <= axis.step().resolution() + 1e-9));
    }
}
