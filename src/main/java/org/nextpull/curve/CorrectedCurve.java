package org.nextpull.curve;

import java.util.List;
import java.util.Optional;
import org.nextpull.air.Correction;
import org.nextpull.unit.SpeedBand;

/**
 * A curve corrected to standard air: the raw one with its factor beside it. It is made from a raw curve only, so that correcting twice
 * does not compile.
 *
 * @param raw as measured
 * @param correction standard and factor, one for the whole pull
 */
public record CorrectedCurve(RawCurve raw, Correction correction) {
    public CurveAxes axes() {
        return raw.axes();
    }

    /** Corrected over measured torque, dimensionless and positive. */
    public double factor() {
        return correction.factor();
    }

    /** The corrected points. */
    public List<CurvePoint> points() {
        return times(raw.points());
    }

    /** The same to be drawn and read, without what {@link #bandMean} needs. */
    public CorrectedCurve withoutNoise() {
        return new CorrectedCurve(raw.withoutNoise(), correction);
    }

    /**
     * The corrected mean over a band; empty where the curve has no point in it.
     *
     * @throws IllegalStateException when the noise of the curve was left out
     */
    public Optional<RawCurve.BandMean> bandMean(SpeedBand band) {
        return raw.bandMean(band).map(mean -> mean.times(factor()));
    }

    /** The point of most corrected torque of the smoothed curve. */
    public CurvePoint peakTorque() {
        return raw.peakTorque().times(factor());
    }

    /** The point of most corrected power of the smoothed curve. */
    public CurvePoint peakPower() {
        return raw.peakPower().times(factor());
    }

    /**
     * The corrected points at the multiples of a distance.
     *
     * @param everyRpm distance in rpm, from 1
     * @throws IllegalArgumentException for a distance of 0 or less, where the curve has more than one point
     */
    public List<CurvePoint> rowsEvery(int everyRpm) {
        return times(raw.rowsEvery(everyRpm));
    }

    /** Whether two curves show the same thing, corrected to the same standard. */
    public boolean comparableTo(CorrectedCurve other) {
        return axes().comparableTo(other.axes()) && correction.standard().equals(other.correction.standard());
    }

    private List<CurvePoint> times(List<CurvePoint> points) {
        return points.stream().map(point -> point.times(factor())).toList();
    }
}
