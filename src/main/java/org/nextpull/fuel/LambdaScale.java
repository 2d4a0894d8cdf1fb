package org.nextpull.fuel;

import org.nextpull.unit.Finite;
import org.nextpull.unit.Lambda;

/**
 * A scale of air-fuel ratios. Oxygen sensors measure lambda; a gauge shows lambda times the ratio that it was set to, whatever fuel
 * burns: one set for petrol shows 14.7 times lambda on E85 too.
 *
 * @param ratioAtLambdaOne what the gauge shows at lambda 1, kg of air for a kg of fuel, positive and finite
 */
public record LambdaScale(double ratioAtLambdaOne) {

    /**
     * Accepts any positive finite ratio.
     *
     * @throws IllegalArgumentException when it is NaN, infinite, 0 or negative
     */
    public LambdaScale {
        Finite.requirePositive("the ratio of a scale at lambda 1", ratioAtLambdaOne);
    }

    /**
     * A scale by what it shows at lambda 1.
     *
     * @param ratioAtLambdaOne kg of air for a kg of fuel, positive and finite
     * @throws IllegalArgumentException when it is NaN, infinite, 0 or negative
     */
    public static LambdaScale of(double ratioAtLambdaOne) {
        return new LambdaScale(ratioAtLambdaOne);
    }

    /** What the scale shows at a lambda: kg of air for a kg of the fuel it was made for, positive. */
    public double airFuelRatio(Lambda lambda) {
        return lambda.value() * ratioAtLambdaOne;
    }

    /**
     * The lambda behind a shown ratio.
     *
     * @param airFuelRatio what the gauge shows, positive and finite
     * @throws IllegalArgumentException when it is NaN, infinite, 0 or negative
     */
    public Lambda lambda(double airFuelRatio) {
        return Lambda.of(airFuelRatio / ratioAtLambdaOne);
    }
}
