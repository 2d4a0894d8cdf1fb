package org.nextpull.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.nextpull.unit.Span;

/**
 * Twelve decisions computed beforehand by an independent program in C (refdata/planner/fixtures.json): posterior, recommendation and
 * worth of each candidate. Tolerances are those stated for a port: 0.02 deg and 2 %.
 */
class PlannerFixturesTest {
    private static final double DEGREES = 0.02;
    private static final double SHARE = 0.02;

    private static final double POOLED_DOF = 6;

    static Stream<JsonNode> fixtures() throws IOException {
        try (InputStream in = Objects.requireNonNull(
                PlannerFixturesTest.class.getResourceAsStream("/refdata/planner/fixtures.json"))) {
            JsonNode all = new ObjectMapper().readTree(in);
            return StreamSupport.stream(all.spliterator(), false).toList().stream();
        }
    }

    private static Sweep sweep(JsonNode fixture) {
        List<SweepPoint> points = new ArrayList<>();
        for (int i = 0; i < fixture.get("a").size(); i++) {
            points.add(new SweepPoint(
                    fixture.get("a").get(i).doubleValue(),
                    fixture.get("y").get(i).doubleValue(),
                    i + 1,
                    i));
        }
        SweepPriors priors = SweepPriors.timing(fixture.get("guess").doubleValue())
                .withLnCurvature(new Belief(Math.log(7.5e-4), 0.45))
                .withDrift(new Belief(-0.015, 0.012))
                .withPooled(
                        new PooledScatter(Math.sqrt(fixture.get("s2pool_pct2").doubleValue()), POOLED_DOF));
        double first = fixture.get("grid").get("A0").doubleValue();
        int count = fixture.get("grid").get("nA").intValue();
        double highest = fixture.get("amax").doubleValue();
        return new Sweep(points, priors, Span.of(first, first + (count - 1) * 0.5), new Permitted(highest, 0.002), 100);
    }

    @ParameterizedTest
    @MethodSource("fixtures")
    void theGridHasTheNodesOfTheFixture(JsonNode fixture) {
        GridNodes nodes = GridNodes.of(sweep(fixture).priors(), sweep(fixture).peakSpan());
        JsonNode grid = fixture.get("grid");
        assertThat(nodes.peaks).hasSize(grid.get("nA").intValue());
        assertClose(nodes.curvatures, grid.get("k"));
        assertClose(nodes.asymmetries, grid.get("g"));
        assertClose(nodes.scatterScales, grid.get("s_scale"));
        assertClose(nodes.scatterLogPriors, grid.get("log_s_prior"));
    }

    private static void assertClose(double[] found, JsonNode expected) {
        for (int i = 0; i < expected.size(); i++) {
            double value = expected.get(i).doubleValue();
            assertThat(found[i]).isCloseTo(value, within(1e-9 * (1 + Math.abs(value))));
        }
    }

    @ParameterizedTest
    @MethodSource("fixtures")
    void thePosteriorIsThatOfTheFixture(JsonNode fixture) {
        SweepPosterior posterior = SweepPosterior.of(sweep(fixture));
        assertThat(posterior.peak().centre()).isCloseTo(number(fixture, "meanA"), within(DEGREES));
        assertThat(posterior.peak().sd()).isCloseTo(number(fixture, "sdA"), within(SHARE * number(fixture, "sdA")));
        assertThat(posterior.peakQuantile(0.05)).isCloseTo(number(fixture, "A05"), within(DEGREES));
        assertThat(posterior.peakQuantile(0.95)).isCloseTo(number(fixture, "A95"), within(DEGREES));
        assertThat(posterior.leastQuantile(0.05)).isCloseTo(number(fixture, "L05"), within(DEGREES));
        assertThat(posterior.leastQuantile(0.95)).isCloseTo(number(fixture, "L95"), within(DEGREES));
        assertThat(posterior.curvature().centre())
                .isCloseTo(number(fixture, "meank"), within(SHARE * number(fixture, "meank")));
        assertThat(posterior.errorScalePercent())
                .isCloseTo(number(fixture, "means"), within(SHARE * number(fixture, "means")));
    }

    private static double number(JsonNode fixture, String key) {
        return fixture.get(key).doubleValue();
    }
}
