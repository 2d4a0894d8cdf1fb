package org.nextpull.fuel;

import org.nextpull.unit.Lambda;

/**
 * A scale of air-fuel ratios. Oxygen sensors measure lambda; a gauge shows lambda times the ratio that it was set to, whatever fuel
 * burns: one set for petrol shows 14.7 times lambda on E85 too.
 *
 * @param ratioAtLambdaOne what the gauge shows at lambda 1, positive
 */
public record LambdaScale(double ratioAtLambdaOne) {
    private static final double PETROL_GAUGE = 14.7;

    public LambdaScale {
        if (!(ratioAtLambdaOne > 0) || !Double.isFinite(ratioAtLambdaOne)) {
            throw new IllegalArgumentException("a scale needs a positive ratio: " + ratioAtLambdaOne);
        }
    }

    public static LambdaScale of(double ratioAtLambdaOne) {
        return new LambdaScale(ratioAtLambdaOne);
    }

    /** The scale that most gauges are set to, 14.7. */
    public static LambdaScale petrolGauge() {
        return new LambdaScale(PETROL_GAUGE);
    }

    /** What the scale shows at a lambda. */
    public double airFuelRatio(Lambda lambda) {
        return lambda.value() * ratioAtLambdaOne;
    }

    /** The lambda behind a shown ratio, which must be positive. */
    public Lambda lambda(double airFuelRatio) {
        return Lambda.of(airFuelRatio / ratioAtLambdaOne);
    }
}
