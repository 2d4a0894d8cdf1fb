package org.nextpull.scatter;

import java.util.Optional;
import org.nextpull.response.Setting;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/**
 * When two pulls were run with one setting.
 *
 * @param advanceDeg advances no further apart than this are one, crank degrees, not negative
 * @param lambda asked mixtures no further apart than this are one, dimensionless, not negative
 */
public record SameSetting(double advanceDeg, double lambda) {
    /** A measured lambda scatters about its target; where none was asked, mixtures within this are one. */
    private static final double LAMBDA_CONTROL = 0.010;

    /**
     * Whether two settings are one: the same label and fuel, and advance, offset and mixture each within the bounds or not known of both.
     * Where a mixture was not asked in one of them, the measured ones decide, and 0.010 of lambda is their least bound (common practice,
     * no source).
     */
    public boolean matches(Setting one, Setting other) {
        return one.isSameConfiguration(other)
                && near(one.advance().map(Advance::deg), other.advance().map(Advance::deg), advanceDeg)
                && near(one.offset().map(Advance::deg), other.offset().map(Advance::deg), advanceDeg)
                && nearMixture(one, other);
    }

    private boolean nearMixture(Setting one, Setting other) {
        if (one.askedLambda().isPresent() && other.askedLambda().isPresent()) {
            return near(
                    one.askedLambda().map(Lambda::value), other.askedLambda().map(Lambda::value), lambda);
        }
        return near(
                one.lambda().map(Lambda::value), other.lambda().map(Lambda::value), Math.max(lambda, LAMBDA_CONTROL));
    }

    private static boolean near(Optional<Double> one, Optional<Double> other, double most) {
        return one.isPresent() == other.isPresent()
                && (one.isEmpty() || Math.abs(one.get() - other.orElseThrow()) <= most);
    }
}
