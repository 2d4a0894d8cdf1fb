package org.nextpull.fit;

/**
 * One pull of a sweep, as the fit sees it.
 *
 * @param setting measured setting: degrees before top dead centre, or hundredths of lambda
 * @param response band-average corrected response of the pull, in any one unit; positive
 * @param pull number of the pull, to name it by
 * @param order place of the pull in the day, from 0; drift is a straight line in it
 */
public record SweepPoint(double setting, double response, int pull, double order) {
    public SweepPoint {
        if (!Double.isFinite(setting) || !Double.isFinite(order) || !Double.isFinite(response) || response <= 0) {
            throw new IllegalArgumentException("setting " + setting + " with response " + response);
        }
    }
}
