package org.nextpull.scatter;

import java.util.Optional;
import org.nextpull.channel.EngineSetting;
import org.nextpull.response.MeasuredPull;
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

    /** Whether a pull was run with the numbers of a setting; a number that the setting does not hold may be any. */
    public boolean isRun(EngineSetting wanted, MeasuredPull pull) {
        Optional<Double> lambdaOfPull =
                pull.asked().lambda().or(pull.setting()::lambda).map(Lambda::value);
        boolean asked = pull.asked().lambda().isPresent();
        return (wanted.advance().isEmpty()
                        || near(
                                wanted.advance().map(Advance::deg),
                                pull.setting().advance().map(Advance::deg),
                                advanceDeg))
                && (wanted.offset().isEmpty()
                        || near(
                                wanted.offset().map(Advance::deg),
                                pull.setting().offset().map(Advance::deg),
                                advanceDeg))
                && (wanted.lambda().isEmpty()
                        || near(
                                wanted.lambda().map(Lambda::value),
                                lambdaOfPull,
                                asked ? lambda : Math.max(lambda, LAMBDA_CONTROL)));
    }

    /**
     * Whether the settings of two pulls are one: the same label and fuel, and advance, offset and mixture each within the bounds or not known of both.
     * Where a mixture was not asked in one of them, the measured ones decide, and 0.010 of lambda is their least bound (common practice,
     * no source).
     */
    public boolean matches(MeasuredPull one, MeasuredPull other) {
        EngineSetting run = one.setting();
        EngineSetting otherRun = other.setting();
        return run.isSameConfiguration(otherRun)
                && near(run.advance().map(Advance::deg), otherRun.advance().map(Advance::deg), advanceDeg)
                && near(run.offset().map(Advance::deg), otherRun.offset().map(Advance::deg), advanceDeg)
                && nearMixture(one, other);
    }

    private boolean nearMixture(MeasuredPull one, MeasuredPull other) {
        Optional<Double> asked = one.asked().lambda().map(Lambda::value);
        Optional<Double> otherAsked = other.asked().lambda().map(Lambda::value);
        return (asked.isPresent() && otherAsked.isPresent())
                ? near(asked, otherAsked, lambda)
                : near(
                        one.setting().lambda().map(Lambda::value),
                        other.setting().lambda().map(Lambda::value),
                        Math.max(lambda, LAMBDA_CONTROL));
    }

    private static boolean near(Optional<Double> one, Optional<Double> other, double most) {
        return one.isPresent() == other.isPresent()
                && (one.isEmpty() || Math.abs(one.get() - other.orElseThrow()) <= most);
    }
}
