package org.nextpull.curve;

import org.nextpull.unit.Power;
import org.nextpull.unit.SpeedBand;
import org.nextpull.unit.Torque;

/**
 * The mean of a curve over a band: the plain mean of its grid points there.
 *
 * @param band the band
 * @param torque mean torque
 * @param power mean power
 * @param torqueError standard error of the mean torque from the noise within the pull; says nothing of the scatter from pull to pull
 * @param powerError the same for the power
 * @param coverage share of the band's grid points that the curve has, dimensionless, above 0 and at most 1
 */
public record BandMean(
        SpeedBand band, Torque torque, Power power, Torque torqueError, Power powerError, double coverage) {
    /** Whether the curve has every point of the band. */
    public boolean isComplete() {
        return coverage >= 1;
    }

    BandMean times(double factor) {
        return new BandMean(
                band,
                Torque.ofNewtonMetres(torque.newtonMetres() * factor),
                Power.ofWatts(power.watts() * factor),
                Torque.ofNewtonMetres(torqueError.newtonMetres() * factor),
                Power.ofWatts(powerError.watts() * factor),
                coverage);
    }
}
