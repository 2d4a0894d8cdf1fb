package org.nextpull.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.nextpull.air.Correction;
import org.nextpull.air.Din70020;
import org.nextpull.air.NoCorrection;
import org.nextpull.finding.Place;
import org.nextpull.plan.DynoFacts;
import org.nextpull.pull.BenchLog;
import org.nextpull.pull.Candidate;
import org.nextpull.pull.Rules;
import org.nextpull.unit.SpeedBand;

class CorrectedCurveTest {
    private static final SpeedBand BAND = new SpeedBand(3000, 6500);

    private static RawCurve raw(DynoFacts.Shaft at) {
        Candidate pull = new BenchLog(50, 1)
                .noise(5, 2)
                .pull(2500, 7000, 300)
                .found(Rules.over(BAND))
                .usable()
                .get(0);
        return new CurveReader(new DynoFacts(
                        DynoFacts.Kind.ENGINE_BRAKE, at, DynoFacts.Inertia.UNKNOWN, DynoFacts.Gearing.UNKNOWN))
                .read(pull)
                .value()
                .orElseThrow();
    }

    private static Correction none() {
        NoCorrection standard = new NoCorrection();
        return standard.correction(standard.reference(), Place.nowhere());
    }

    private static Correction times(double factor) {
        Correction one = none();
        return new Correction(one.standard(), factor, one.air(), one.findings());
    }

    @Test
    void everyFigureIsTheRawOneTimesTheFactor() {
        RawCurve raw = raw(DynoFacts.Shaft.CRANK);
        CorrectedCurve corrected = new CorrectedCurve(raw, times(1.02));
        assertThat(corrected.raw()).isSameAs(raw);
        assertThat(corrected.points()).hasSameSizeAs(raw.points());
        for (int index = 0; index < raw.points().size(); index++) {
            CurvePoint one = corrected.points().get(index);
            assertThat(one.torque().newtonMetres())
                    .isCloseTo(1.02 * raw.points().get(index).torque().newtonMetres(), within(1e-9));
        }
        assertThat(corrected.bandMean(BAND).orElseThrow().power().watts())
                .isCloseTo(1.02 * raw.bandMean(BAND).orElseThrow().power().watts(), within(1e-6));
        assertThat(corrected.peakPower().rpm()).isEqualTo(raw.peakPower().rpm());
        assertThat(corrected.peakTorque().torque().newtonMetres())
                .isCloseTo(1.02 * raw.peakTorque().torque().newtonMetres(), within(1e-9));
        assertThat(corrected.rowsEvery(500)).hasSameSizeAs(raw.rowsEvery(500));
        assertThat(new CorrectedCurve(raw, none()).points()).isEqualTo(raw.points());
    }

    /** The compiler forbids correcting twice: nothing but a raw curve goes into a corrected one. */
    @Test
    void aCorrectedCurveIsMadeFromARawOneOnly() {
        assertThat(CorrectedCurve.class.getConstructors())
                .singleElement()
                .satisfies(constructor ->
                        assertThat(constructor.getParameterTypes()).containsExactly(RawCurve.class, Correction.class));
        assertThat(RawCurve.class.isAssignableFrom(CorrectedCurve.class)).isFalse();
        assertThat(Arrays.stream(RawCurve.class.getConstructors())
                        .flatMap(constructor -> Arrays.stream(constructor.getParameterTypes())))
                .doesNotContain(CorrectedCurve.class);
    }

    @Test
    void onlyCurvesOfOneShaftAndOneStandardCompare() {
        CorrectedCurve crank = new CorrectedCurve(raw(DynoFacts.Shaft.CRANK), none());
        CorrectedCurve wheel = new CorrectedCurve(raw(DynoFacts.Shaft.WHEEL), none());
        Din70020 standard = new Din70020();
        CorrectedCurve other = new CorrectedCurve(
                raw(DynoFacts.Shaft.CRANK), standard.correction(standard.reference(), Place.nowhere()));
        assertThat(crank.comparableTo(new CorrectedCurve(raw(DynoFacts.Shaft.CRANK), times(1.01))))
                .isTrue();
        assertThat(crank.comparableTo(wheel)).isFalse();
        assertThat(crank.comparableTo(other)).isFalse();
    }
}
