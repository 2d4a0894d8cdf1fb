package org.nextpull.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.nextpull.channel.SparkMap;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/** A mixture that moved by itself over a day: it explains torque, but nobody sweeps it, so what it costs is nothing that a pull can bring. */
class UnsoughtMixtureTest {
    private static final double[] RPM = {3500, 4250, 5000, 5750, 6500};
    private static final double BEST_DEG = 27;
    private static final Lambda MIDDLE = Lambda.of(0.87);
    private static final RowCaps NONE = RowCaps.none(RPM.length);

    private final SurfacePosterior posterior = SurfacePosterior.of(day());

    private static Surface day() {
        SparkMap guess = SparkMap.flat(Advance.ofDeg(28));
        List<SurfacePull> pulls = new ArrayList<>();
        double[] run = {20, 22, 24, 26, 28, 30, 24, 28};
        for (int i = 0; i < run.length; i++) {
            double off = run[i] - BEST_DEG;
            double lnTorque = Math.log(200) - 4e-4 * off * off;
            List<SurfacePull.Reading> readings = new ArrayList<>();
            for (int row = 0; row < RPM.length; row++) {
                Lambda lambda = Lambda.of(i % 2 == 0 ? 0.863 : 0.877);
                readings.add(
                        new SurfacePull.Reading(row, Advance.ofDeg(run[i]), Optional.of(lambda), 0, 100 * lnTorque));
            }
            pulls.add(new SurfacePull(0, i, false, readings));
        }
        SurfacePriors priors = SurfacePriors.usual(guess).withMixture(Optional.of(MixturePrior.ofGuess(MIDDLE)));
        return new Surface(SpeedRows.ofRpm(RPM), pulls, priors);
    }

    private TorqueLeft left(Optional<Lambda> sought) {
        SurfaceAim aim = SurfaceAim.map(posterior, sought, NONE);
        return aim.left(aim.wantedDeg());
    }

    private TorqueLeft leftByNumber(Optional<Lambda> sought) {
        SurfaceAim aim = SurfaceAim.flat(posterior, sought, NONE);
        return aim.left(aim.wantedDeg());
    }

    @Test
    void itsOwnDistanceFromTheBestIsNotCountedAsLeft() {
        assertThat(left(Optional.empty()).expectedPercent()).isLessThan(0.02);
        assertThat(left(Optional.of(MIDDLE)).expectedPercent()).isGreaterThan(0.06);
        assertThat(leftByNumber(Optional.empty()).expectedPercent()).isLessThan(0.02);
        assertThat(leftByNumber(Optional.of(MIDDLE)).expectedPercent()).isGreaterThan(0.06);
    }

    @Test
    void andNoPullPromisesToBringIt() {
        SparkMap map = SparkMap.of(
                RPM, SurfaceAim.map(posterior, Optional.empty(), NONE).wantedDeg());
        PullOutlook outlook = new PullOutlook(posterior);
        RowCaps reach = RowCaps.ofDeg(map.shiftedBy(3).degAt(RPM));
        double unsought = outlook.leftAfter(new PullOutlook.NextPull(map, reach, Optional.empty()), NONE);
        double sought = outlook.leftAfter(
                new PullOutlook.NextPull(map, reach, Optional.of(new PullOutlook.NextMixture(0, 4))), NONE);
        assertThat(unsought).isLessThan(0.02);
        assertThat(sought).isGreaterThan(0.06);
    }
}
