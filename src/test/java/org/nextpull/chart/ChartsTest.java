package org.nextpull.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.markers.SeriesMarkers;

/** What is handed to the drawing library; the pictures are left below {@code target} for whoever wants to look at them. */
class ChartsTest {
    private static final Path PICTURES = Path.of("target/charts");
    private static final ChartSize PAPER = ChartSize.paper();

    private static void keep(String name, byte[] png) throws IOException {
        Files.createDirectories(PICTURES);
        Files.write(PICTURES.resolve(name + ".png"), png);
    }

    private static BufferedImage picture(byte[] png) throws IOException {
        return Objects.requireNonNull(ImageIO.read(new ByteArrayInputStream(png)));
    }

    private static List<String> inLegend(XYChart chart) {
        return chart.getSeriesCollection().stream()
                .filter(XYSeries::isShowInLegend)
                .map(XYSeries::getName)
                .toList();
    }

    private static List<String> names(XYChart chart) {
        return chart.getSeriesCollection().stream().map(XYSeries::getName).toList();
    }

    private static XYSeries series(XYChart chart, String name) {
        return Objects.requireNonNull(chart.getSeries(name), name);
    }

    @Test
    void everyKindIsDrawnAtTwiceThePixelsInBothLooks() throws IOException {
        for (Map.Entry<String, ChartLook> look :
                Map.of("light", ChartLook.light(), "dark", ChartLook.dark()).entrySet()) {
            Charts charts = new Charts(PAPER, look.getValue());
            Map<String, byte[]> drawn = Map.of(
                    "sweep", charts.draw(Samples.sweep()),
                    "speed", charts.draw(Samples.speed()),
                    "overlay", charts.draw(Samples.overlay()),
                    "difference", charts.draw(Samples.difference()));
            for (Map.Entry<String, byte[]> one : drawn.entrySet()) {
                keep(one.getKey() + "-" + look.getKey(), one.getValue());
                BufferedImage picture = picture(one.getValue());
                assertThat(picture.getWidth()).isEqualTo(2 * PAPER.width());
                assertThat(picture.getHeight()).isEqualTo(2 * PAPER.height());
            }
        }
    }

    @Test
    void aPaintedChartIsTheSameAsTheOneOfAFile() throws IOException {
        Charts charts = new Charts(new ChartSize(400, 300, 1), ChartLook.light());
        BufferedImage painted = new BufferedImage(400, 300, BufferedImage.TYPE_INT_RGB);
        charts.paint(Samples.sweep(), painted.createGraphics());
        BufferedImage filed = picture(charts.draw(Samples.sweep()));
        assertThat(painted.getRGB(0, 0, 400, 300, null, 0, 400)).isEqualTo(filed.getRGB(0, 0, 400, 300, null, 0, 400));
    }

    @Test
    void aSweepShowsEachKindOfPullByAMarkerOfItsOwn() {
        XYChart chart = Samples.sweep().frame(PAPER, ChartLook.light()).chart();
        assertThat(inLegend(chart))
                .containsExactly(
                        "90 % interval of the curve",
                        "fitted curve",
                        "knock limit",
                        "MBT, 90 %",
                        "pulls",
                        "pulls with little weight",
                        "knocked",
                        "final");
        assertThat(List.of("pulls", "pulls with little weight", "knocked", "final"))
                .extracting(name -> series(chart, name).getMarker())
                .containsExactly(
                        SeriesMarkers.CIRCLE, SeriesMarkers.SQUARE, SeriesMarkers.TRIANGLE_DOWN, SeriesMarkers.DIAMOND);
        assertThat(series(chart, "pulls").getXData()).containsExactly(20, 20, 22, 24, 26, 28, 30);
        assertThat(series(chart, "final").getXData()).containsExactly(26.5);
        assertThat(chart.getXAxisTitle()).isEqualTo("spark advance, deg before top dead centre");
        assertThat(chart.getYAxisTitle()).isEqualTo("band-average torque, corrected, N·m");
    }

    @Test
    void theIntervalOfTheBestLiesAlongTheFactorBelowTheData() {
        XYChart chart = Samples.sweep().frame(PAPER, ChartLook.light()).chart();
        XYSeries interval = series(chart, "MBT, 90 %");
        assertThat(Arrays.stream(interval.getXData()).distinct().toArray()).containsExactly(24.9, 28.2);
        double lowestPoint =
                Arrays.stream(series(chart, "pulls").getYData()).min().orElseThrow();
        assertThat(Arrays.stream(interval.getYData()).max().orElseThrow()).isLessThan(lowestPoint);
    }

    @Test
    void aLimitBeyondWhatWasRunIsNotDrawn() {
        XYChart chart = Samples.sweep().frame(PAPER, ChartLook.light()).chart();
        assertThat(names(chart)).doesNotContain("plan's limit").contains("knock limit");
    }

    @Test
    void pullsAreDrawnInTheInkOfTheLook() {
        for (ChartLook look : List.of(ChartLook.light(), ChartLook.dark())) {
            XYChart chart = Samples.sweep().frame(PAPER, look).chart();
            assertThat(series(chart, "pulls").getMarkerColor()).isEqualTo(look.ink());
        }
    }

    @Test
    void aSweepBeforeItsFirstFitShowsOnlyItsPulls() {
        SweepPlot bare = new SweepPlot(
                "Mixture",
                "lambda",
                "band-average torque, corrected, N·m",
                List.of(new Point(0.87, 190)),
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of());
        assertThat(inLegend(bare.frame(PAPER, ChartLook.light()).chart())).containsExactly("pulls");
        assertThat(new Charts(PAPER, ChartLook.light()).draw(bare)).isNotEmpty();
    }

    @Test
    void torqueAndPowerDifferByScaleAndDashAndPullsByMarkerToo() {
        XYChart chart = Samples.speed().frame(PAPER, ChartLook.light()).chart();
        XYSeries torque = series(chart, "torque, best, pull 7");
        XYSeries power = series(chart, "power, best, pull 7");
        assertThat(torque.getYAxisGroup()).isZero();
        assertThat(power.getYAxisGroup()).isEqualTo(1);
        assertThat(torque.getYData()).doesNotContain(Double.NaN);
        assertThat(power.getYData()).as("gaps between dashes").contains(Double.NaN);
        assertThat(inLegend(chart)).containsExactly("first, pull 1", "best, pull 7", "last, pull 9");
        assertThat(inLegend(chart).stream()
                        .map(name -> series(chart, name).getMarker())
                        .distinct())
                .hasSize(3);
        assertThat(chart.getYAxisTitle()).isEqualTo("solid: torque, corrected, N·m");
        assertThat(chart.getYAxisGroupTitle(1)).isEqualTo("dashed: power, corrected, kW");
    }

    @Test
    void aLongCurveIsThinnedAndItsTicksStayOffTheData() {
        List<Point> even = IntStream.range(0, 100_000)
                .mapToObj(step -> new Point(2000 + 0.05 * step, 150))
                .toList();
        SpeedPlot plot = new SpeedPlot(
                "torque, corrected, N·m", "power, corrected, kW", List.of(new SpeedPlot.Line("first", even, even)));
        XYChart chart = plot.frame(PAPER, ChartLook.light()).chart();
        assertThat(series(chart, "torque, first").getXData())
                .hasSizeLessThanOrEqualTo(250)
                .startsWith(2000)
                .endsWith(2000 + 0.05 * 99_999);
        assertThat(chart.getStyler().getXAxisMin()).isLessThan(2000);
    }

    @Test
    void dashesLieOnTheLineAndLeaveGaps() {
        List<Point> line = List.of(new Point(0, 0), new Point(10, 20), new Point(20, 0));
        List<Point> dashes = Stroke.cut(line, 30, 20);
        List<Point> drawn =
                dashes.stream().filter(point -> !Double.isNaN(point.y())).toList();
        assertThat(drawn)
                .allSatisfy(point -> assertThat(point.y()).isCloseTo(20 - 2 * Math.abs(point.x() - 10), within(1e-9)));
        assertThat(dashes.size() - drawn.size()).isEqualTo(20);
    }

    @Test
    void anOverlayTellsCurvesApartByDash() {
        XYChart chart = Samples.overlay().frame(PAPER, ChartLook.light()).chart();
        assertThat(inLegend(chart)).containsExactly("short pipe", "long pipe", "no filter");
        assertThat(names(chart)).contains("interval of short pipe", "interval of long pipe");
        assertThat(series(chart, "short pipe").getYData()).doesNotContain(Double.NaN);
        assertThat(series(chart, "long pipe").getYData()).contains(Double.NaN);
        assertThat(series(chart, "no filter").getYData()).contains(Double.NaN);
    }

    @Test
    void aDifferenceShowsItsIntervalAndWhatIsTooSmallToMatter() {
        XYChart chart = Samples.difference().frame(PAPER, ChartLook.light()).chart();
        assertThat(inLegend(chart)).containsExactly("too small to matter", "95 % CI", "difference");
        assertThat(Arrays.stream(series(chart, "too small to matter").getYData())
                        .distinct()
                        .toArray())
                .containsExactlyInAnyOrder(-1, 1);
        assertThat(chart.getStyler().getYAxisMin()).isLessThan(-1);
    }

    /** Two that a grey printer must tell apart differ by dash or mark, or by a contrast that is seen (WCAG 2.1 formula; 1.15 own choice). */
    @Test
    void inGreyEachSeriesDiffersFromTheOthersOfItsKind() {
        List<Point> level = List.of(new Point(3000, 20), new Point(4000, 22), new Point(5000, 21));
        List<Point> above =
                level.stream().map(point -> new Point(point.x(), point.y() + 2)).toList();
        MapPlot map = new MapPlot(
                List.of(level),
                above,
                above,
                level,
                Optional.of(new Plot.Band(level, above)),
                Optional.of(new Plot.Band(level, above)),
                0.2,
                level,
                23);
        SweepPlot edges = Samples.sweep()
                .with(new SweepPlot.Line(SweepPlot.Line.Kind.RICH_EDGE, 22))
                .with(new SweepPlot.Line(SweepPlot.Line.Kind.LEAN_EDGE, 30))
                .with(new SweepPlot.Line(SweepPlot.Line.Kind.NEXT, 31));
        for (Plot plot : List.of(edges, map, Samples.overlay(), Samples.difference(), Samples.speed())) {
            List<XYSeries> all = plot.frame(PAPER, ChartLook.light()).chart().getSeriesCollection().stream()
                    .filter(XYSeries::isShowInLegend)
                    .toList();
            for (XYSeries one : all) {
                for (XYSeries other : all) {
                    assertThat(one == other || !kind(one).equals(kind(other)) || contrast(one, other) >= 1.15)
                            .as(one.getName() + " beside " + other.getName())
                            .isTrue();
                }
            }
        }
    }

    /** All that tells a series from others without its colour. */
    private static String kind(XYSeries series) {
        String stroke = Optional.ofNullable(series.getLineStyle())
                .map(line -> line.getLineWidth() + " " + Arrays.toString(line.getDashArray()))
                .orElse("");
        long gaps = Arrays.stream(series.getYData()).filter(Double::isNaN).count();
        return series.getXYSeriesRenderStyle() + " " + series.getMarker() + " " + stroke + " " + gaps;
    }

    private static double contrast(XYSeries one, XYSeries other) {
        double first = luminance(one) + 0.05;
        double second = luminance(other) + 0.05;
        return Math.max(first, second) / Math.min(first, second);
    }

    private static double luminance(XYSeries series) {
        boolean isArea = series.getXYSeriesRenderStyle()
                .filter(style -> style == XYSeries.XYSeriesRenderStyle.PolygonArea)
                .isPresent();
        Color colour = Objects.requireNonNull(
                isArea
                        ? series.getFillColor()
                        : Optional.ofNullable(series.getLineColor()).orElse(series.getMarkerColor()));
        double[] weights = {0.2126, 0.7152, 0.0722};
        int[] parts = {colour.getRed(), colour.getGreen(), colour.getBlue()};
        double sum = 0;
        for (int part = 0; part < parts.length; part++) {
            double onWhite = 1 + colour.getAlpha() / 255.0 * (parts[part] / 255.0 - 1);
            sum += weights[part] * (onWhite <= 0.04045 ? onWhite / 12.92 : Math.pow((onWhite + 0.055) / 1.055, 2.4));
        }
        return sum;
    }

    @Test
    void peaksAreNamedOverTheirCurvesAndMarkedOnThem() {
        List<Point> torque = List.of(new Point(3000, 180), new Point(5000, 200), new Point(7000, 160));
        List<Point> power = List.of(new Point(3000, 60), new Point(6000, 115), new Point(7000, 110));
        SpeedPlot bare = plot(new SpeedPlot.Line("after, pull 6", torque, power));
        SpeedPlot named = plot(new SpeedPlot.Line(
                "after, pull 6", torque, power, List.of(new Point(5000, 200), new Point(6000, 115))));
        ChartSize low = new ChartSize(700, 150, 1);
        assertThat(named.frame(low, ChartLook.light()).chart().getStyler().getYAxisMax())
                .as("no room is made where there is none")
                .isEqualTo(
                        bare.frame(low, ChartLook.light()).chart().getStyler().getYAxisMax());
        assertThat(inkOverTheCurves(bare)).isZero();
        assertThat(inkOverTheCurves(named)).as("letters of two lines of words").isGreaterThan(300);
        XYSeries marks = series(named.frame(PAPER, ChartLook.light()).chart(), "after, pull 6");
        assertThat(marks.getXData()).startsWith(5000);
        assertThat(marks.getYData()).startsWith(200);
    }

    private static SpeedPlot plot(SpeedPlot.Line line) {
        return new SpeedPlot("torque, N·m", "power, kW", List.of(line));
    }

    private static long inkOverTheCurves(SpeedPlot plot) {
        BufferedImage picture = new BufferedImage(PAPER.pixelsWide(), PAPER.pixelsHigh(), BufferedImage.TYPE_INT_RGB);
        XYChart chart = plot.frame(PAPER, ChartLook.light()).chart();
        chart.paint(picture.createGraphics(), picture.getWidth(), picture.getHeight());
        int top = (int) chart.getScreenYFromChart(chart.getStyler().getYAxisMax(), 0) + 1;
        int curve = (int) chart.getScreenYFromChart(200, 0) - 20;
        int from = (int) chart.getScreenXFromChart(3000);
        int to = (int) chart.getScreenXFromChart(7000);
        long ink = 0;
        for (int y = top; y < curve; y++) {
            for (int x = from; x < to; x++) {
                ink += (picture.getRGB(x, y) & 0xFF) < 100 ? 1 : 0;
            }
        }
        return ink;
    }
}
