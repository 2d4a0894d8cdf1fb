package org.nextpull.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.SparkMap;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Span;

/** What a setting makes over another, on days whose torque is known. */
class SettingGainTest {
    private static final double[] RPM = {3500, 4250, 5000, 5750, 6500};
    private static final double[][] RUN = {
        {20, 0.84}, {22, 0.84}, {24, 0.84}, {26, 0.84}, {28, 0.84}, {26, 0.875}, {27, 0.91}, {26, 0.88}
    };
    private static final EngineSetting OTHER = setting(22.5, 0.865);
    private static final EngineSetting OWN = setting(26, 0.88);
    /** Numerical noise of a solve. */
    private static final double NOISE = 1e-9;

    private final Random random = new Random(4);

    /** An engine: best advance at the middle speed, its slope over speed, percent lost per degree squared, best lambda. */
    private record Engine(double peakDeg, double degPerRow, double curvature, double lambda) {
        double lost(double deg, double mixture, int row) {
            double off = deg - peakDeg - degPerRow * (row - 2);
            double lean = 100 * (mixture - lambda);
            return curvature * off * off + 0.02 * lean * lean;
        }

        double gain() {
            double sum = 0;
            for (int row = 0; row < RPM.length; row++) {
                sum += lost(22.5, 0.865, row) - lost(26, 0.88, row);
            }
            return sum / RPM.length;
        }
    }

    private static EngineSetting setting(double deg, double lambda) {
        return EngineSetting.of(SparkMap.flat(Advance.ofDeg(deg)), Optional.of(Lambda.of(lambda)));
    }

    private SurfacePosterior day(Engine engine, double scatter) {
        List<SurfacePull> pulls = new ArrayList<>();
        for (int i = 0; i < RUN.length; i++) {
            List<SurfacePull.Reading> readings = new ArrayList<>();
            double whole = scatter * random.nextGaussian();
            for (int row = 0; row < RPM.length; row++) {
                readings.add(new SurfacePull.Reading(
                        row,
                        Advance.ofDeg(RUN[i][0]),
                        Optional.of(Lambda.of(RUN[i][1])),
                        500 - engine.lost(RUN[i][0], RUN[i][1], row) + whole + scatter * random.nextGaussian(),
                        0));
            }
            pulls.add(new SurfacePull(0, i, false, readings));
        }
        SurfacePriors priors = SurfacePriors.usual(SparkMap.flat(Advance.ofDeg(28)))
                .withMixture(Optional.of(MixturePrior.ofGuess(Lambda.of(0.87))));
        return SurfacePosterior.of(new Surface(SpeedRows.ofRpm(RPM), pulls, priors));
    }

    @Test
    void thereAndBackIsNothing() {
        SurfacePosterior day = day(new Engine(27, 1, 0.05, 0.88), 0.2);
        PosteriorValue there = day.gain(OTHER, OWN).orElseThrow();
        PosteriorValue back = day.gain(OWN, OTHER).orElseThrow();
        assertThat(back.mean()).isCloseTo(-there.mean(), within(NOISE));
        assertThat(back.interval(95).low()).isCloseTo(-there.interval(95).high(), within(1e-6));
        assertThat(day.gain(OWN, OWN).orElseThrow().interval(95).width()).isCloseTo(0, within(NOISE));
        EngineSetting between = setting(24, 0.87);
        assertThat(day.gain(OTHER, between).orElseThrow().mean()
                        + day.gain(between, OWN).orElseThrow().mean())
                .isCloseTo(there.mean(), within(NOISE));
    }

    @Test
    void withoutScatterItIsTheTruth() {
        Engine engine = new Engine(27, 1, 0.05, 0.88);
        assertThat(day(engine, 1e-3).gain(OTHER, OWN).orElseThrow().mean()).isCloseTo(engine.gain(), within(0.05));
    }

    @Test
    void whatNoPullReachedIsNotTold() {
        SurfacePosterior day = day(new Engine(27, 1, 0.05, 0.88), 0.2);
        assertThat(day.gain(setting(31, 0.88), OWN)).isEmpty();
        assertThat(day.gain(setting(17, 0.88), OWN)).isEmpty();
        assertThat(day.gain(OWN, setting(26, 0.95))).isEmpty();
    }

    /** 95 % intervals of 30 engines: by a binomial distribution fewer than 25 hold in one of 300 such tests. */
    @Test
    void theIntervalHoldsTheTruth() {
        int held = 0;
        for (int i = 0; i < 30; i++) {
            Engine engine = new Engine(
                    26 + 1.5 * random.nextGaussian(),
                    1 + 0.3 * random.nextGaussian(),
                    0.05 * Math.exp(0.3 * random.nextGaussian()),
                    0.875 + 0.012 * random.nextGaussian());
            Span interval = day(engine, 0.25).gain(OTHER, OWN).orElseThrow().interval(95);
            held += interval.contains(engine.gain()) ? 1 : 0;
        }
        assertThat(held).isGreaterThanOrEqualTo(25);
    }
}
