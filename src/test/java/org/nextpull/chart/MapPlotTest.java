package org.nextpull.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.nextpull.session.DayByPull;
import org.nextpull.unit.UnitSystem;
import org.nextpull.window.SampleDays;

/** The chart of a spark map on the sample day of a map, and what is read off a drawn chart. */
class MapPlotTest {
    /** About 1 % of torque: three times the scatter of the day and what spark and mixture make of each other. */
    private static final double SCATTER_TOLERANCE_NM = 1.8;

    private static final DayByPull DAY = DayByPull.of(SampleDays.input("hillclimb-e10-map"));

    @Test
    void itShowsWhatWasTriedTheMapThatStaysAndWhereTheBestLies() {
        MapPlot plot = MapPlot.of(DAY.whole()).orElseThrow();
        assertThat(plot.tried()).hasSize(6);
        assertThat(plot.tried().get(0)).hasSize(14);
        assertThat(plot.chosen()).hasSize(8);
        assertThat(plot.next()).as("the day has ended").isEmpty();
        assertThat(plot.interval().orElseThrow().low()).hasSize(14);
        Plot.Band nearTop = plot.nearTop().orElseThrow();
        for (int row = 0; row < nearTop.low().size(); row++) {
            assertThat(nearTop.low().get(row).y())
                    .isLessThanOrEqualTo(nearTop.high().get(row).y());
        }
        assertThat(plot.most()).isEqualTo(38);
        assertThat(plot.knock()).isEmpty();
        assertThat(plot.frame(ChartSize.paper(), ChartLook.light()).chart().getSeriesCollection())
                .extracting(XYSeries::getName)
                .anyMatch(name -> name.startsWith("best, 90 %"))
                .anyMatch(name -> name.startsWith("within 0.2 % of peak"))
                .anyMatch(name -> name.startsWith("final"));
    }

    @Test
    void aDayOfOneNumberOfSparkHasNone() {
        assertThat(MapPlot.of(
                        DayByPull.of(SampleDays.input("hillclimb-e10-timing")).whole()))
                .isEmpty();
    }

    /** Drawn as they ran, the first pulls of the day lie up to 4 N.m below a curve that is at the spark that stays. */
    @Test
    void pullsAtOtherSparkAreMovedToTheCurveOfTheMixture() {
        List<SweepPlot> both = SweepPlots.of(
                DayByPull.of(SampleDays.input("hillclimb-e10-day")).whole(), UnitSystem.METRIC);
        SweepPlot mixture = both.get(1);
        assertThat(mixture.chosen().orElseThrow().y())
                .as("what stays makes the same in both charts")
                .isCloseTo(both.get(0).chosen().orElseThrow().y(), within(1e-9));
        assertThat(mixture.xTitle()).isEqualTo("lambda; each pull moved to the final spark");
        assertThat(mixture.points()).hasSizeGreaterThan(5).allSatisfy(pull -> {
            Point near = mixture.curve().stream()
                    .min(Comparator.comparingDouble(point -> Math.abs(point.x() - pull.x())))
                    .orElseThrow();
            assertThat(pull.y()).isCloseTo(near.y(), within(SCATTER_TOLERANCE_NM));
        });
    }

    @Test
    void theValueBelowThePointerIsThatOfTheNearestPoint() {
        SweepPlot plot = SweepPlots.of(
                        DayByPull.of(SampleDays.input("hillclimb-e10-timing")).whole(), UnitSystem.METRIC)
                .get(0);
        ChartSize size = ChartSize.paper();
        BufferedImage picture = new BufferedImage(size.pixelsWide(), size.pixelsHigh(), BufferedImage.TYPE_INT_RGB);
        Graphics2D surface = picture.createGraphics();
        Charts.Reading reading = new Charts(size, ChartLook.light()).paint(plot, surface);
        surface.dispose();
        XYChart same = plot.frame(size, ChartLook.light()).chart();
        same.paint(picture.createGraphics(), size.pixelsWide(), size.pixelsHigh());
        Point first = plot.points().get(0);
        double x = same.getScreenXFromChart(first.x());
        double y = same.getScreenYFromChart(first.y());
        assertThat(reading.at(x + 1, y - 1).orElseThrow()).contains(": 20.0, ");
        assertThat(reading.at(0, 0)).isEmpty();
    }
}
