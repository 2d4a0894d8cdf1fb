package org.nextpull.fit;

import java.util.Optional;
import org.nextpull.unit.Lambda;

/**
 * What a day is after at one mixture and under caps: the best map, or the best single number where the ignition is flat.
 */
public interface SurfaceAim {
    /** Degrees wanted at each row; the same at all for a flat ignition. Caps are not looked at. */
    double[] wantedDeg();

    /** Degrees wanted at each row where the advance may be a little less than the best for a given share of torque; the cap where that lies below. */
    double[] leastWithin(double nearBestPercent);

    /** What a setting leaves of what may be had. */
    TorqueLeft left(double[] deg);

    /** The aim of an ignition that holds a map, at a mixture where that is sought too. */
    static SurfaceAim map(SurfacePosterior posterior, Optional<Lambda> lambda, RowCaps caps) {
        return new MapAim(posterior, lambda.map(posterior::hundredths), caps);
    }

    /** The same of an ignition that holds one number. */
    static SurfaceAim flat(SurfacePosterior posterior, Optional<Lambda> lambda, RowCaps caps) {
        return new FlatAim(posterior, lambda.map(posterior::hundredths), caps.lowest());
    }
}
