package org.nextpull.fuel;

import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.unit.Lambda;

/**
 * A scale of air-fuel ratios and what it is called.
 *
 * @param name a fuel, or the ratio itself
 * @param scale the scale
 */
public record NamedScale(String name, LambdaScale scale) {

    /** Nothing that burns needs less air, or more: hydrogen, which needs the most by mass, takes about 34. */
    private static final double LEAST = 0.1;

    private static final double MOST = 100;

    /**
     * The scale that somebody names: a number is what the gauge shows at lambda 1; a fuel stands for the ratio that the trade prints for
     * it, and where none is known for that of its elements. A number outside 0.1 to 100 and an unknown fuel give a finding.
     */
    public static Outcome<NamedScale> find(String text, Blends known, Place place) {
        if (!looksLikeNumber(text)) {
            return known.find(text, place).map(NamedScale::inPrint);
        }
        try {
            double ratio = Double.parseDouble(text);
            if (ratio >= LEAST && ratio <= MOST) {
                return Outcome.of(new NamedScale(text, LambdaScale.of(ratio)));
            }
        } catch (NumberFormatException noNumber) {
            // the finding below says so
        }
        return Outcome.failed(Finding.error(FindingCode.FUEL_SCALE_UNKNOWN, place, Detail.of("value", text)));
    }

    /**
     * The scale that gauges for a fuel are commonly set to.
     *
     * @param fuel a fuel that burns
     * @throws IllegalArgumentException for a fuel without a printed ratio that needs no air, such as water
     */
    public static NamedScale inPrint(Fuel fuel) {
        return new NamedScale(
                fuel.name(),
                LambdaScale.of(
                        fuel.value(FuelProperty.PRINTED_AIR_FUEL_RATIO).orElse(fuel.stoichiometricAirFuelRatio())));
    }

    /** What the scale shows at a lambda, kg of air for a kg of fuel. */
    public double shows(Lambda lambda) {
        return scale.airFuelRatio(lambda);
    }

    private static boolean looksLikeNumber(String text) {
        return !text.isEmpty() && "+-.0123456789".indexOf(text.charAt(0)) >= 0;
    }
}
