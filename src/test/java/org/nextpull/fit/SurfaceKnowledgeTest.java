package org.nextpull.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.nextpull.channel.SparkMap;
import org.nextpull.unit.Advance;

class SurfaceKnowledgeTest {
    private static MapFixture stop() throws IOException {
        return MapFixture.all()
                .filter(f -> f.toString().equals("stop"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theShapeOfTheMapIsKeptAndItsLevelIsTheNewGuess() throws IOException {
        SurfacePosterior before = SurfacePosterior.of(stop().surface());
        SurfacePriors usual = SurfacePriors.usual(SparkMap.flat(Advance.ofDeg(30)));
        SurfacePriors learned = before.knowledge().priors(usual);
        PeakMap now = SurfacePosterior.of(new Surface(stop().rows(), List.of(), learned))
                .peaks();
        double mean = 0;
        for (int r = 0; r < 14; r++) {
            mean += now.mean(r) / 14;
        }
        assertThat(mean).isCloseTo(30, within(1e-6));
        double rise = before.peaks().mean(13) - before.peaks().mean(0);
        assertThat(now.mean(13) - now.mean(0)).isCloseTo(rise, within(1e-6));
        assertThat(learned.lnCurvature().centre()).isCloseTo(Math.log(before.curvaturePercent() / 100), within(0.2));
        assertThat(learned.lnCurvature().sd()).isBetween(0.5, 0.75);
    }

    /** The scatter of the readings, on no more than the three degrees of freedom that a logarithm known within 0.4 is worth. */
    @Test
    void theScatterGoesOnToTheRunsThatFollow() throws IOException {
        SurfacePosterior before = SurfacePosterior.of(stop().surface());
        assertThat(before.knowledge().scatter().percent()).isCloseTo(before.scatterPercent(), within(0.1));
        assertThat(before.knowledge().scatter().degreesOfFreedom()).isBetween(1.0, 3.125);
    }

    @Test
    void whatWasLearnedOfTheShapeNarrowsItAndNotTheLevel() throws IOException {
        SurfacePriors usual = SurfacePriors.usual(SparkMap.flat(Advance.ofDeg(27)));
        SurfacePriors learned =
                SurfacePosterior.of(stop().surface()).knowledge().priors(usual);
        double[] narrow = learned.map().covariance(stop().rows(), 1);
        double[] plain = usual.map().covariance(stop().rows(), 1);
        assertThat(riseVariance(narrow)).isLessThan(riseVariance(plain) / 2);
        assertThat(narrow[7 * 14 + 7]).isGreaterThan(plain[7 * 14 + 7]);
    }

    /** The flattest of the published sweeps that the usual prior rests on lose 0.015 % a degree squared. */
    @Test
    void noDayTeachesThatAdvanceHardlyMatters() throws IOException {
        SurfaceKnowledge known = SurfacePosterior.of(stop().surface()).knowledge();
        SurfacePriors usual = SurfacePriors.usual(SparkMap.flat(Advance.ofDeg(27)));
        SurfaceKnowledge flat = new SurfaceKnowledge(
                known.map(),
                known.doubt(),
                new Belief(Math.log(1e-6), 0.1),
                known.lnScatter(),
                known.shape(),
                known.drift(),
                known.mixture());
        assertThat(Math.exp(flat.priors(usual).lnCurvature().centre())).isCloseTo(1.5e-4, within(1e-9));
        assertThat(known.priors(usual).lnCurvature().centre())
                .isEqualTo(known.lnCurvature().centre());
    }

    private static double riseVariance(double[] covariance) {
        return covariance[0] - 2 * covariance[13] + covariance[13 * 14 + 13];
    }

    @Test
    void aShapeLaidOnOtherRowsIsThatOfItsOwnRowsWhereTheyMeet() {
        SpeedRows learned = SpeedRows.ofRpm(3000, 4000, 5000);
        CarriedShape shape = new CarriedShape(learned, new double[] {4, 1, 0, 1, 3, 1, 0, 1, 5});
        double[] own = shape.covariance();
        double[] laid = shape.covariance(SpeedRows.ofRpm(3000, 3500, 5000));
        assertThat(laid[0]).isCloseTo(own[0], within(1e-12));
        assertThat(laid[2]).isCloseTo(own[2], within(1e-12));
        assertThat(laid[1]).isCloseTo((own[0] + own[1]) / 2, within(1e-12));
        assertThat(own[0] + own[1] + own[2]).isCloseTo(0, within(1e-12));
    }
}
