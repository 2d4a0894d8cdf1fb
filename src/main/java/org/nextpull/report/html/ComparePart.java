package org.nextpull.report.html;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.nextpull.chart.ChartSize;
import org.nextpull.chart.DifferencePlot;
import org.nextpull.chart.OverlayPlot;
import org.nextpull.chart.Plot;
import org.nextpull.compare.Comparison;
import org.nextpull.compare.ComparisonResult;
import org.nextpull.compare.MeasuredComparison;
import org.nextpull.finding.Finding;
import org.nextpull.plan.Goal;
import org.nextpull.report.CompareWords;
import org.nextpull.report.FindingText;
import org.nextpull.report.Shown;
import org.nextpull.session.CandidateDay;
import org.nextpull.session.ComparedDay;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.Quantity;

/** Labels against a reference: the verdicts, what they rest on, and the difference over speed; or why they cannot be compared. */
final class ComparePart {
    private static final String TITLE = "Comparison";

    private final Optional<ComparedDay> compared;
    private final Goal.Response response;
    private final boolean isDecided;
    private final Shown shown;

    /**
     * @param result the day that was compared; where it has decided between candidates, the verdicts stand
     */
    ComparePart(Optional<ComparedDay> compared, SessionResult result, Shown shown) {
        this.compared = compared;
        this.response = result.plan().goal().response();
        isDecided = result.candidates().filter(CandidateDay::isDecided).isPresent();
        this.shown = shown;
    }

    Section section() {
        return compared.map(this::section).orElseGet(() -> Section.of(TITLE));
    }

    /** The verdict on each label; empty where none was compared. */
    List<String> verdicts() {
        return compared.flatMap(day -> day.outcome().value())
                .map(both -> new CompareWords(shown, response, both))
                .map(words -> words.deciding().comparisons().stream()
                        .map(one -> verdict(words, one))
                        .toList())
                .orElse(List.of());
    }

    private String verdict(CompareWords words, Comparison one) {
        return isDecided ? words.standing(one) : words.verdict(one);
    }

    /** The difference of each label, for the first page. */
    Optional<Section.Grid> summary() {
        return compared.flatMap(day -> day.outcome().value()).map(this::summary);
    }

    private Section.Grid summary(MeasuredComparison both) {
        CompareWords words = new CompareWords(shown, response, both);
        ComparisonResult result = words.deciding();
        boolean hasPeaks = hasOverlay();
        List<String> headings = new ArrayList<>(
                List.of("label", "average " + shown.unit(words.quantity()).sign(), "difference %", "from", "to"));
        if (hasPeaks) {
            headings.addAll(List.of("peak " + shown.unit(Quantity.TORQUE).sign(), "at rpm"));
        }
        Section.Grid grid = Section.Grid.of(
                "Against \"" + result.reference().label() + "\", with 95 % CI"
                        + (hasPeaks ? "; peak of the mean curve in the band" : ""),
                headings.toArray(String[]::new));
        String level = shown.number(words.quantity(), result.reference().level());
        grid = grid.row(withPeak(List.of(result.reference().label(), level, "", "", ""), both));
        for (Comparison one : result.comparisons()) {
            List<String> cells = List.of(
                    one.label(),
                    shown.number(words.quantity(), one.level()),
                    CompareWords.signed(one.difference().percent()),
                    CompareWords.signed(one.difference().interval().low()),
                    CompareWords.signed(one.difference().interval().high()));
            grid = grid.row(withPeak(cells, both));
        }
        return grid;
    }

    /** Followed by the peak of the mean curve of torque of a label, which its first cell names, with its limits and speed. */
    private String[] withPeak(List<String> cells, MeasuredComparison both) {
        List<String> all = new ArrayList<>(cells);
        all.addAll(both.torque().stream()
                .flatMap(torque -> torque.curves().stream())
                .filter(curve -> curve.label().equals(cells.get(0)))
                .flatMap(curve -> curve.rows().stream())
                .max(Comparator.comparingDouble(row -> row.level().value()))
                .map(row -> List.of(
                        shown.torque(row.level().value()) + " \u00b1 "
                                + shown.torque(row.level().halfWidth()),
                        Shown.fixed(row.rpm(), 0)))
                .orElse(List.of()));
        return all.toArray(String[]::new);
    }

    /** Whether there is a chart of the labels over speed. */
    boolean hasOverlay() {
        return compared.flatMap(day -> day.outcome().value())
                .flatMap(MeasuredComparison::torque)
                .filter(torque -> !torque.curves().isEmpty())
                .isPresent();
    }

    /** The chart of the labels over speed, for the first page. */
    Optional<Section.Figure> overlay(ChartSize size) {
        return compared.flatMap(day -> day.outcome().value())
                .flatMap(both -> both.torque()
                        .flatMap(torque -> OverlayPlot.of(both, shown.units())
                                .map(plot -> figure(size, plot, "the mean torque of each label", levels(torque)))));
    }

    private Section section(ComparedDay day) {
        FindingText sentences = FindingText.in(shown);
        List<Finding> findings = day.outcome().findings();
        List<String> said =
                findings.stream().map(sentences::withPlace).distinct().toList();
        return day.outcome()
                .value()
                .map(both -> section(day, both).withItems(said))
                .orElseGet(() -> Section.of(TITLE)
                        .withParagraphs(List.of("The labels of this day could not be compared."))
                        .withItems(said));
    }

    private Section section(ComparedDay day, MeasuredComparison both) {
        CompareWords words = new CompareWords(shown, response, both);
        ComparisonResult result = words.deciding();
        List<String> paragraphs = new ArrayList<>();
        result.comparisons().forEach(one -> paragraphs.add(verdict(words, one)));
        words.groups(result).ifPresent(paragraphs::add);
        paragraphs.addAll(words.further(result));
        paragraphs.add(CompareWords.drift(result) + " " + CompareWords.order(day.orderFrom()));
        return Section.of(TITLE)
                .withParagraphs(paragraphs)
                .withFigures(figures(both))
                .withGrids(List.of(scatters(result)));
    }

    private static Section.Grid scatters(ComparisonResult result) {
        Section.Grid grid = Section.Grid.of("Repeatability of each label, drift removed", "label", "pulls", "%");
        for (ComparisonResult.LabelScatter scatter : result.scatters()) {
            grid = grid.row(
                    scatter.label(),
                    String.valueOf(scatter.pulls()),
                    Shown.fixed(scatter.scatter().percent(), 2));
        }
        return grid;
    }

    /** The differences over speed, two side by side where there are several. */
    private static List<Section.Figure> figures(MeasuredComparison both) {
        List<Section.Figure> figures = new ArrayList<>();
        List<DifferencePlot> plots = DifferencePlot.of(both);
        ChartSize size = plots.size() > 1 ? Section.Figure.HALF : ChartsPart.THIRD;
        List<Comparison> comparisons = both.torque().stream()
                .flatMap(result -> result.comparisons().stream())
                .filter(one -> !one.rows().isEmpty())
                .toList();
        for (int index = 0; index < plots.size(); index++) {
            figures.add(figure(
                    size,
                    plots.get(index),
                    "the difference of torque, " + plots.get(index).title(),
                    differences(plots.get(index).title(), comparisons.get(index))));
        }
        return figures;
    }

    private static Section.Figure figure(ChartSize size, Plot plot, String what, Section.Grid numbers) {
        String alt = "Chart of " + what + ", over speed with its 95 % limits. Its numbers are in the table below.";
        return Section.Figure.of(what, plot, size, alt, numbers);
    }

    private Section.Grid levels(ComparisonResult torque) {
        String unit = shown.unit(Quantity.TORQUE).sign();
        List<ComparisonResult.LevelCurve> curves = torque.curves();
        List<String> headings = new ArrayList<>(List.of("rpm"));
        curves.forEach(curve -> headings.addAll(List.of(curve.label(), "from", "to")));
        Section.Grid grid = Section.Grid.of(
                "Mean corrected torque, " + unit + ", with whole-curve 95 % limits", headings.toArray(new String[0]));
        int rows = curves.stream().mapToInt(curve -> curve.rows().size()).min().orElse(0);
        for (int row = 0; row < rows; row++) {
            List<String> cells = new ArrayList<>();
            for (ComparisonResult.LevelCurve curve : curves) {
                ComparisonResult.LevelCurve.Row one = curve.rows().get(row);
                if (cells.isEmpty()) {
                    cells.add(Shown.fixed(one.rpm(), 0));
                }
                cells.add(shown.torque(one.level().value()));
                cells.add(shown.torque(one.level().low()));
                cells.add(shown.torque(one.level().high()));
            }
            grid = grid.row(cells.toArray(new String[0]));
        }
        return grid;
    }

    private static Section.Grid differences(String title, Comparison one) {
        Section.Grid grid = Section.Grid.of(
                "Difference of torque, " + title + ", %, with whole-curve 95 % limits", "rpm", "%", "from", "to");
        for (Comparison.RowDifference row : one.rows()) {
            grid = grid.row(
                    Shown.fixed(row.rpm(), 0),
                    CompareWords.signed(row.percent()),
                    CompareWords.signed(row.band().low()),
                    CompareWords.signed(row.band().high()));
        }
        return grid;
    }
}
