package org.nextpull.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.nextpull.channel.SparkMap;
import org.nextpull.unit.Advance;

/** What must hold whatever the numbers are: no outside value is needed. */
class SurfaceIdentitiesTest {
    /** Numerical noise of a solve. */
    private static final double NOISE = 1e-6;

    private static MapFixture shaped() throws IOException {
        return MapFixture.all()
                .filter(f -> f.toString().startsWith("shaped"))
                .findFirst()
                .orElseThrow();
    }

    private static Surface usual(MapFixture fixture, List<SurfacePull> pulls) {
        return new Surface(
                fixture.rows(),
                pulls,
                SurfacePriors.usual(SparkMap.of(fixture.numbers("rows_rpm"), fixture.numbers("prior_mean_deg"))));
    }

    private static List<SurfacePull> changed(List<SurfacePull> pulls, UnaryOperator<SurfacePull.Reading> change) {
        return pulls.stream()
                .map(pull -> new SurfacePull(
                        pull.day(),
                        pull.order(),
                        pull.isHeld(),
                        pull.readings().stream().map(change).toList()))
                .toList();
    }

    private static void assertSame(SurfacePosterior found, SurfacePosterior expected, double shiftDeg) {
        for (int r = 0; r < expected.rows().size(); r++) {
            assertThat(found.peaks().mean(r)).isCloseTo(expected.peaks().mean(r) + shiftDeg, within(NOISE));
            assertThat(found.peaks().sd(r)).isCloseTo(expected.peaks().sd(r), within(NOISE));
        }
        assertThat(found.scatterPercent()).isCloseTo(expected.scatterPercent(), within(NOISE));
    }

    @Test
    void anotherUnitOfTorqueChangesNothing() throws IOException {
        MapFixture fixture = shaped();
        List<SurfacePull> inPounds = changed(
                fixture.pulls(),
                at -> SurfacePull.Reading.of(
                        at.row(), at.advance().deg(), at.lnTorquePercent() + 100 * Math.log(0.737562)));
        assertSame(
                SurfacePosterior.of(usual(fixture, inPounds)), SurfacePosterior.of(usual(fixture, fixture.pulls())), 0);
    }

    @Test
    void theFormOfTheTorqueCurveChangesNothing() throws IOException {
        MapFixture fixture = shaped();
        List<SurfacePull> otherCurve = changed(
                fixture.pulls(),
                at -> SurfacePull.Reading.of(
                        at.row(), at.advance().deg(), at.lnTorquePercent() + 3 * Math.sin(at.row())));
        SurfacePosterior found = SurfacePosterior.of(usual(fixture, otherCurve));
        SurfacePosterior expected = SurfacePosterior.of(usual(fixture, fixture.pulls()));
        assertSame(found, expected, 0);
    }

    @Test
    void anotherZeroOfAdvanceMovesTheAnswerWithIt() throws IOException {
        MapFixture fixture = shaped();
        List<SurfacePull> moved = changed(
                fixture.pulls(),
                at -> SurfacePull.Reading.of(at.row(), at.advance().deg() + 5, at.lnTorquePercent()));
        Surface plain = usual(fixture, fixture.pulls());
        MapPrior map = plain.priors().map();
        Surface shifted = new Surface(
                plain.rows(),
                moved,
                plain.priors()
                        .withMap(new MapPrior(map.guess().shiftedBy(5), map.spread(), map.carried(), map.wideShare())));
        assertSame(SurfacePosterior.of(shifted), SurfacePosterior.of(plain), 5);
    }

    @Test
    void theOrderOfReadingsAndOfPullsInTheListChangesNothing() throws IOException {
        MapFixture fixture = shaped();
        List<SurfacePull> shuffled = new ArrayList<>();
        for (SurfacePull pull : fixture.pulls()) {
            List<SurfacePull.Reading> readings = new ArrayList<>(pull.readings());
            Collections.shuffle(readings, new Random(3));
            shuffled.add(new SurfacePull(pull.day(), pull.order(), pull.isHeld(), readings));
        }
        Collections.reverse(shuffled);
        assertSame(
                SurfacePosterior.of(usual(fixture, shuffled)), SurfacePosterior.of(usual(fixture, fixture.pulls())), 0);
    }

    @Test
    void withoutAPullTheAnswerIsWhatWasThought() throws IOException {
        MapFixture fixture = shaped();
        PeakMap peaks = SurfacePosterior.of(usual(fixture, List.of())).peaks();
        double[] spread = MapPrior.Spread.ofGuess().covariance(fixture.rows(), 1);
        for (int r = 0; r < fixture.rows().size(); r++) {
            assertThat(peaks.mean(r)).isCloseTo(fixture.numbers("prior_mean_deg")[r], within(NOISE));
            assertThat(peaks.sd(r))
                    .isGreaterThan(Math.sqrt(spread[r * fixture.rows().size() + r]));
        }
    }

    @Test
    void onePullAndAPullWithoutReadingsHardlyMoveTheMap() throws IOException {
        MapFixture fixture = shaped();
        List<SurfacePull> one = fixture.pulls().subList(0, 1);
        PeakMap alone = SurfacePosterior.of(usual(fixture, one)).peaks();
        for (int r = 0; r < fixture.rows().size(); r++) {
            assertThat(alone.mean(r)).isCloseTo(fixture.numbers("prior_mean_deg")[r], within(0.3));
        }
        List<SurfacePull> withEmpty = new ArrayList<>(fixture.pulls());
        withEmpty.add(new SurfacePull(0, 9, false, List.of()));
        SurfacePosterior full = SurfacePosterior.of(usual(fixture, fixture.pulls()));
        SurfacePosterior found = SurfacePosterior.of(usual(fixture, withEmpty));
        assertThat(found.peaks().mean(4)).isCloseTo(full.peaks().mean(4), within(0.02));
    }

    @Test
    void oneRowAndTwoRowsAreAnsweredAsMany() throws IOException {
        for (int rows = 1; rows <= 2; rows++) {
            double[] rpm = rows == 1 ? new double[] {4000} : new double[] {3500, 5000};
            List<SurfacePull> pulls = new ArrayList<>();
            double[] advances = {18, 22, 26, 30, 28};
            for (int i = 0; i < advances.length; i++) {
                List<SurfacePull.Reading> readings = new ArrayList<>();
                for (int r = 0; r < rows; r++) {
                    double off = advances[i] - 26;
                    readings.add(SurfacePull.Reading.of(r, advances[i], 500 - 0.05 * off * off));
                }
                pulls.add(new SurfacePull(0, i, false, readings));
            }
            PeakMap peaks = SurfacePosterior.of(new Surface(
                            SpeedRows.ofRpm(rpm), pulls, SurfacePriors.usual(SparkMap.flat(Advance.ofDeg(28)))))
                    .peaks();
            for (int r = 0; r < rows; r++) {
                assertThat(peaks.mean(r)).isCloseTo(26, within(0.4));
                assertThat(peaks.sd(r)).isBetween(0.1, 2.0);
            }
        }
    }

    @Test
    void anotherDayMayStandAtAnotherLevel() throws IOException {
        MapFixture fixture = shaped();
        List<SurfacePull> twoDays = new ArrayList<>(fixture.pulls());
        for (SurfacePull pull : fixture.pulls()) {
            List<SurfacePull.Reading> readings = pull.readings().stream()
                    .map(at -> SurfacePull.Reading.of(at.row(), at.advance().deg(), at.lnTorquePercent() + 1.5))
                    .toList();
            twoDays.add(new SurfacePull(1, pull.order(), false, readings));
        }
        SurfacePosterior together = SurfacePosterior.of(usual(fixture, twoDays));
        SurfacePosterior alone = SurfacePosterior.of(usual(fixture, fixture.pulls()));
        assertThat(together.dayLevelPercent(1)).isCloseTo(1.5, within(0.1));
        for (int r = 0; r < fixture.rows().size(); r++) {
            assertThat(together.peaks().mean(r))
                    .isCloseTo(alone.peaks().mean(r), within(alone.peaks().sd(r)));
            assertThat(together.peaks().sd(r)).isLessThan(alone.peaks().sd(r));
        }
        List<SurfacePull> oneDay = twoDays.stream()
                .map(pull -> new SurfacePull(0, pull.order() + 4 * pull.day(), false, pull.readings()))
                .toList();
        assertThat(SurfacePosterior.of(usual(fixture, oneDay)).scatterPercent())
                .isGreaterThan(together.scatterPercent() + 0.1);
    }

    @Test
    void rowsAtUnevenSpeedsAreAnsweredAtTheirOwnSpeeds() throws IOException {
        double[] rpm = {3000, 3600, 4900, 5100, 6800};
        List<SurfacePull> pulls = new ArrayList<>();
        double[] shifts = {-6, -2, 2, 5, 0};
        for (int i = 0; i < shifts.length; i++) {
            List<SurfacePull.Reading> readings = new ArrayList<>();
            for (int r = 0; r < rpm.length; r++) {
                double advance = 24 + shifts[i];
                double off = advance - best(rpm[r]);
                readings.add(SurfacePull.Reading.of(r, advance, 500 - 0.05 * off * off));
            }
            pulls.add(new SurfacePull(0, i, false, readings));
        }
        Surface surface = new Surface(
                SpeedRows.ofRpm(rpm),
                pulls,
                SurfacePriors.usual(SparkMap.flat(Advance.ofDeg(25))).withMixture(Optional.empty()));
        PeakMap peaks = SurfacePosterior.of(surface).peaks();
        for (int r = 0; r < rpm.length; r++) {
            assertThat(peaks.mean(r)).isCloseTo(best(rpm[r]), within(0.5));
        }
    }

    /** Where every node counts, one of too little curvature wins here and the map is 2 degrees off at its upper end. */
    @Test
    void manyPullsDoNotLeadToANodeThatFitsThemOnlyInAStraightLine() {
        Random random = new Random(5);
        double[] rpm = new double[30];
        for (int r = 0; r < rpm.length; r++) {
            rpm[r] = 3000 + r * 125;
        }
        List<SurfacePull> pulls = new ArrayList<>();
        for (int i = 0; i < 25; i++) {
            double level = 0.3 * random.nextGaussian();
            List<SurfacePull.Reading> readings = new ArrayList<>();
            for (int r = 0; r < rpm.length; r++) {
                double advance = 16 + 1.7 * (i % 10) + r * 0.2;
                double off = advance - 26 - r * 0.3;
                readings.add(
                        SurfacePull.Reading.of(r, advance, level - 0.05 * off * off + 0.2 * random.nextGaussian()));
            }
            pulls.add(new SurfacePull(0, i, false, readings));
        }
        SurfacePosterior posterior = SurfacePosterior.of(
                new Surface(SpeedRows.ofRpm(rpm), pulls, SurfacePriors.usual(SparkMap.flat(Advance.ofDeg(28)))));
        for (int r = 0; r < rpm.length; r++) {
            assertThat(posterior.peaks().mean(r)).isCloseTo(26 + r * 0.3, within(1.2));
        }
        assertThat(posterior.curvaturePercent()).isBetween(0.03, 0.07);
    }

    private static double best(double rpm) {
        return 20 + (rpm - 3000) / 500;
    }
}
