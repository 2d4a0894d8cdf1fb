package org.nextpull.engine.gas;

import org.nextpull.fuel.Composition;
import org.nextpull.fuel.Element;

/**
 * Laminar burning velocity of a premixed charge: that of the fuel that is burnt or, of a blend, the mean of its two parts by mass.
 *
 * @param first the fuel with the less oxygen
 * @param second the other
 * @param share of the other by mass, 0 to 1
 */
public record Flame(Correlation first, Correlation second, double share) {
    /**
     * {@code S = (Bm + Bphi (phi - phim)^2) (T/298 K)^alpha (p/1 atm)^beta}, times {@code 1 - 2.06 x^0.77} for diluting gas (Rhodes
     * and Keck). Each fuel has its own exponents over richness; all figures from memory.
     */
    public enum Correlation {
        /** Rhodes D.B., Keck J.C., SAE 850047, 1985, as tabulated in Heywood, section 9.3.4. */
        GASOLINE(0.305, -0.549, 1.21),
        /**
         * Gulder O.L., SAE 841000, 1984: {@code 0.465 phi^0.25 exp(-6.34 (phi - 1.075)^2)}, here the parabola of the same top, good
         * for phi 0.85 to 1.35, with the pressure exponent of rich charges.
         */
        ETHANOL(0.475, -3.0, 1.09),
        /** Metghalchi M., Keck J.C., Combustion and Flame 48, 1982. */
        METHANOL(0.369, -1.405, 1.11);

        private final double strength;
        private final double slope;
        private final double peak;

        Correlation(double strength, double slope, double peak) {
            this.strength = strength;
            this.slope = slope;
            this.peak = peak;
        }

        private Exponent heat() {
            return switch (this) {
                case GASOLINE -> new Exponent(2.4, -0.271, 3.51);
                case ETHANOL -> new Exponent(1.75, 0, 1);
                case METHANOL -> new Exponent(2.98, -0.8, 1);
            };
        }

        private Exponent pressure() {
            return switch (this) {
                case GASOLINE -> new Exponent(-0.357, 0.14, 2.77);
                case ETHANOL -> new Exponent(0, -0.17, -0.5);
                case METHANOL -> new Exponent(-0.38, 0.22, 1);
            };
        }

        private double speed(double phi, Gas.State state) {
            double off = phi - peak;
            return Math.max(LEAST_FACTOR * strength, strength + slope * off * off)
                    * Math.pow(state.kelvins() / REFERENCE_K, heat().at(phi))
                    * Math.pow(state.pascals() / REFERENCE_PA, pressure().at(phi));
        }
    }

    /** {@code base + slope phi^power}. */
    private record Exponent(double base, double slope, double power) {
        double at(double phi) {
            return base + slope * Math.pow(phi, power);
        }
    }

    private static final double ETHANOL_OXYGEN = 0.3473;
    private static final double METHANOL_OXYGEN = 0.4993;
    private static final double REFERENCE_K = 298;
    private static final double REFERENCE_PA = 101325;
    private static final double DILUTION_SLOPE = 2.06;
    private static final double DILUTION_POWER = 0.77;
    private static final double LEAST_FACTOR = 0.05;

    /** The flame of one fuel alone. */
    public static Flame of(Correlation fuel) {
        return new Flame(fuel, fuel, 0);
    }

    /**
     * The flame of a fuel of that composition: gasoline, alcohol and what lies between, told by the oxygen. Up to the oxygen of ethanol
     * the alcohol is taken as ethanol.
     */
    static Flame ofComposition(Composition composition) {
        double oxygen = composition.fraction(Element.OXYGEN);
        if (oxygen <= ETHANOL_OXYGEN) {
            return new Flame(Correlation.GASOLINE, Correlation.ETHANOL, oxygen / ETHANOL_OXYGEN);
        }
        double methanol = (oxygen - ETHANOL_OXYGEN) / (METHANOL_OXYGEN - ETHANOL_OXYGEN);
        return new Flame(Correlation.ETHANOL, Correlation.METHANOL, Math.min(1, methanol));
    }

    /**
     * Laminar burning velocity in m/s.
     *
     * @param lambda air-fuel equivalence ratio of the charge
     * @param dilution mole fraction of residual gas and water vapour
     * @param state unburned charge
     */
    public double speed(double lambda, double dilution, Gas.State state) {
        double phi = 1 / lambda;
        double diluted = Math.max(LEAST_FACTOR, 1 - DILUTION_SLOPE * Math.pow(dilution, DILUTION_POWER));
        return diluted * ((1 - share) * first.speed(phi, state) + share * second.speed(phi, state));
    }
}
