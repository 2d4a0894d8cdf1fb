package org.nextpull.engine.gas;

import org.nextpull.fuel.Composition;
import org.nextpull.fuel.Element;

/**
 * Laminar burning velocity of a premixed charge: {@code S = (Bm + Bphi (phi - phim)^2) (T/298 K)^alpha (p/1 atm)^beta} with
 * {@code alpha = 2.18 - 0.8 (phi - 1)}, {@code beta = -0.16 + 0.22 (phi - 1)}, times {@code 1 - 2.06 x^0.77} for diluting gas.
 *
 * <p>Metghalchi M., Keck J.C., Combustion and Flame 48, 1982, with the gasoline and dilution terms of Rhodes D.B., Keck J.C., SAE
 * 850047, 1985, as tabulated in Heywood, section 9.3.4; from memory. Ethanol is not among them: its numbers are set so that it burns
 * as much faster than gasoline as later measurements at room temperature say (about a tenth, from memory).
 *
 * @param strength velocity of the fastest mixture in m/s
 * @param slope Bphi in m/s, negative
 * @param peak richness of the fastest mixture
 */
public record Flame(double strength, double slope, Richness peak) {
    /**
     * Fuel-air equivalence ratio, one over lambda.
     *
     * @param phi above 0
     */
    public record Richness(double phi) {}

    public static final Flame GASOLINE = new Flame(0.305, -0.549, new Richness(1.21));
    public static final Flame ETHANOL = new Flame(0.34, -1.1, new Richness(1.12));
    public static final Flame METHANOL = new Flame(0.369, -1.405, new Richness(1.11));

    private static final double ETHANOL_OXYGEN = 0.3473;
    private static final double METHANOL_OXYGEN = 0.4993;
    private static final double REFERENCE_K = 298;
    private static final double REFERENCE_PA = 101325;
    private static final double DILUTION_SLOPE = 2.06;
    private static final double DILUTION_POWER = 0.77;
    private static final double LEAST_FACTOR = 0.05;

    /**
     * The correlation for a fuel of that composition: gasoline, alcohol and what lies between, told by the oxygen. Up to the oxygen of
     * ethanol the alcohol is taken as ethanol.
     */
    public static Flame ofComposition(Composition composition) {
        double oxygen = composition.fraction(Element.OXYGEN);
        if (oxygen <= ETHANOL_OXYGEN) {
            return GASOLINE.towards(ETHANOL, oxygen / ETHANOL_OXYGEN);
        }
        return ETHANOL.towards(METHANOL, Math.min(1, (oxygen - ETHANOL_OXYGEN) / (METHANOL_OXYGEN - ETHANOL_OXYGEN)));
    }

    /** The correlation between this fuel and another, by the mass share of the other. */
    public Flame towards(Flame other, double share) {
        return new Flame(
                (1 - share) * strength + share * other.strength,
                (1 - share) * slope + share * other.slope,
                new Richness((1 - share) * peak.phi() + share * other.peak.phi()));
    }

    /**
     * Laminar burning velocity in m/s.
     *
     * @param lambda air-fuel equivalence ratio of the charge
     * @param dilution mole fraction of residual gas and water vapour
     * @param state unburned charge
     */
    public double speed(double lambda, double dilution, GasState state) {
        double phi = 1 / lambda;
        double off = phi - peak.phi();
        double atReference = Math.max(LEAST_FACTOR * strength, strength + slope * off * off);
        double diluted = Math.max(LEAST_FACTOR, 1 - DILUTION_SLOPE * Math.pow(dilution, DILUTION_POWER));
        return atReference
                * diluted
                * Math.pow(state.kelvins() / REFERENCE_K, 2.18 - 0.8 * (phi - 1))
                * Math.pow(state.pascals() / REFERENCE_PA, -0.16 + 0.22 * (phi - 1));
    }
}
