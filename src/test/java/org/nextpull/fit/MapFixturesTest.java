package org.nextpull.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The posterior of the surface against {@link MapFixture}. Tolerances are those stated for a port: 0.02 deg and 2 %. */
class MapFixturesTest {
    private static final double DEGREES = 0.02;
    private static final double SHARE = 0.02;

    static Stream<MapFixture> fixtures() throws IOException {
        return MapFixture.all();
    }

    private static Offset<Double> share(double value) {
        return within(SHARE * Math.abs(value));
    }

    @ParameterizedTest
    @MethodSource("fixtures")
    void theBestAdvanceOfEachRowIsThatOfTheFixture(MapFixture fixture) {
        PeakMap peaks = SurfacePosterior.of(fixture.surface()).peaks();
        for (int r = 0; r < fixture.rows().size(); r++) {
            double sd = fixture.numbers("posterior_sd_deg")[r];
            assertThat(peaks.mean(r)).isCloseTo(fixture.numbers("posterior_mean_deg")[r], within(DEGREES));
            assertThat(peaks.sd(r)).isCloseTo(sd, share(sd));
            assertThat(peaks.reported(r).quantile(0.05)).isCloseTo(fixture.numbers("low90_deg")[r], within(DEGREES));
            assertThat(peaks.reported(r).quantile(0.95)).isCloseTo(fixture.numbers("high90_deg")[r], within(DEGREES));
        }
    }

    @ParameterizedTest
    @MethodSource("fixtures")
    void errorsDriftCurvatureAndWeightsAreThoseOfTheFixture(MapFixture fixture) {
        SurfacePosterior posterior = SurfacePosterior.of(fixture.surface());
        assertThat(posterior.rowErrorPercent()).isCloseTo(fixture.number("row_error_percent"), within(0.001));
        assertThat(posterior.scatterPercent()).isCloseTo(fixture.number("scatter_percent"), within(0.002));
        double curvature = fixture.number("curvature_percent_per_deg2");
        assertThat(posterior.curvaturePercent()).isCloseTo(curvature, share(curvature));
        assertThat(posterior.driftPercent(0)).isCloseTo(fixture.number("drift_percent_per_pull"), within(0.0005));
        for (int i = 0; i < fixture.pulls().size(); i++) {
            assertThat(posterior.weightOf(i)).isCloseTo(fixture.numbers("pull_weights")[i], within(0.01));
        }
    }

    @ParameterizedTest
    @MethodSource("fixtures")
    void whatTheBestMapRunLeavesIsThatOfTheFixture(MapFixture fixture) {
        SurfaceLoss loss = SurfacePosterior.of(fixture.surface())
                .loss(RowCaps.none(fixture.rows().size()));
        int best = fixture.json().get("best_proven_pull").intValue() - 1;
        TorqueLeft left = loss.of(fixture.advance(best));
        assertThat(left.expectedPercent())
                .isCloseTo(
                        fixture.number("best_proven_expected_left_percent"),
                        share(fixture.number("best_proven_expected_left_percent")));
        assertThat(left.chanceOfMuch()).isCloseTo(fixture.number("best_proven_chance_over_half"), within(0.002));
    }
}
