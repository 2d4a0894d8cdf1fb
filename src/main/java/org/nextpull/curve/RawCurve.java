package org.nextpull.curve;

import java.util.List;
import java.util.Optional;
import org.nextpull.unit.SpeedBand;

/**
 * Torque and power over speed as measured, before any correction for the air. It has only the points that the pull covers.
 *
 * @param grid the grid that its points lie on; a hold has one point at the speed that was held
 * @param axes what it shows
 * @param points its points, of rising speed, at least one
 * @param noise how sure they are
 */
public record RawCurve(SpeedGrid grid, CurveAxes axes, List<CurvePoint> points, CurveNoise noise) {
    /**
     * Accepts points in the order given, which must be that of rising speed.
     *
     * @throws IllegalArgumentException without a point
     */
    public RawCurve {
        points = List.copyOf(points);
        if (points.isEmpty()) {
            throw new IllegalArgumentException("a curve has a point");
        }
    }

    /** The mean over a band; empty where the curve has no point in it. */
    public Optional<BandMean> bandMean(SpeedBand band) {
        return BandAverage.of(this, band);
    }

    /** The point of most torque of the smoothed curve. */
    public CurvePoint peakTorque() {
        return CurvePeak.ofTorque(this);
    }

    /** The point of most power of the smoothed curve. */
    public CurvePoint peakPower() {
        return CurvePeak.ofPower(this);
    }

    /**
     * The points at the multiples of a distance, read between neighbours where the grid has none there. A curve of one point gives that
     * one.
     *
     * @param everyRpm distance in rpm, from 1
     * @throws IllegalArgumentException for a distance of 0 or less, where the curve has more than one point
     */
    public List<CurvePoint> rowsEvery(int everyRpm) {
        return CurveRows.every(everyRpm, this);
    }
}
