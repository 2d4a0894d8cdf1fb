package org.nextpull.engine.gas;

/** A mixture of species and fuel vapour of fixed composition, folded into one polynomial of temperature for speed. */
public final class GasMixture implements Gas {
    static final int TERMS = 5;
    private static final double UNIVERSAL = 8.314462618;
    private static final double SEAM_K = 1000;
    private static final double REFERENCE_K = 298.15;

    private final double gasConstant;
    private final double[] low;
    private final double[] high;
    private final double lowOffset;
    private final double highOffset;

    private GasMixture(double gasConstant, double[] low, double[] high) {
        this.gasConstant = gasConstant;
        this.low = low;
        this.high = high;
        this.lowOffset = -integral(low, REFERENCE_K);
        this.highOffset = integral(low, SEAM_K) + lowOffset - integral(high, SEAM_K);
    }

    public static Builder builder() {
        return new Builder();
    }

    @Override
    public double gasConstant() {
        return gasConstant;
    }

    @Override
    public double heatCapacity(double kelvins) {
        double[] c = kelvins < SEAM_K ? low : high;
        return c[0] + kelvins * (c[1] + kelvins * (c[2] + kelvins * (c[3] + kelvins * c[4])));
    }

    @Override
    public double internalEnergy(double kelvins) {
        return kelvins < SEAM_K ? integral(low, kelvins) + lowOffset : integral(high, kelvins) + highOffset;
    }

    private static double integral(double[] c, double kelvins) {
        return kelvins
                * (c[0] + kelvins * (c[1] / 2 + kelvins * (c[2] / 3 + kelvins * (c[3] / 4 + kelvins * c[4] / 5))));
    }

    /** Gathers amounts of a mixture; not for use by several threads. */
    public static final class Builder {
        private double mass;
        private double moles;
        private final double[] low = new double[TERMS];
        private final double[] high = new double[TERMS];

        private Builder() {}

        /** Adds an amount in mol. */
        public Builder add(Species species, double amount) {
            mass += amount * species.molarMass();
            moles += amount;
            for (int power = 0; power < TERMS; power++) {
                low[power] += amount * UNIVERSAL * species.low(power);
                high[power] += amount * UNIVERSAL * species.high(power);
            }
            return this;
        }

        /** Adds the vapour of a fuel, by mass in kg. */
        Builder addVapour(EngineFuel fuel, double kilograms) {
            mass += kilograms;
            moles += kilograms / fuel.vapourMolarMass();
            for (int power = 0; power < FuelVapour.TERMS; power++) {
                double share = kilograms * FuelVapour.coefficient(fuel, power);
                low[power] += share;
                high[power] += share;
            }
            return this;
        }

        /** Adds another mixture, by mass in kg. */
        public Builder add(GasMixture other, double kilograms) {
            mass += kilograms;
            moles += kilograms * other.gasConstant / UNIVERSAL;
            for (int power = 0; power < TERMS; power++) {
                low[power] += kilograms * other.low[power];
                high[power] += kilograms * other.high[power];
            }
            low[0] += kilograms * other.gasConstant;
            high[0] += kilograms * other.gasConstant;
            return this;
        }

        /**
         * The mixture of what was added.
         *
         * @throws IllegalStateException when nothing was
         */
        public GasMixture build() {
            if (!(mass > 0)) {
                throw new IllegalStateException("a mixture of nothing");
            }
            double constant = moles * UNIVERSAL / mass;
            double[] lowPerMass = new double[TERMS];
            double[] highPerMass = new double[TERMS];
            for (int power = 0; power < TERMS; power++) {
                lowPerMass[power] = low[power] / mass;
                highPerMass[power] = high[power] / mass;
            }
            lowPerMass[0] -= constant;
            highPerMass[0] -= constant;
            return new GasMixture(constant, lowPerMass, highPerMass);
        }
    }

    /**
     * Specific heat of fuel vapour at constant pressure, {@code cp = b0 + b1 T + b2 T^2} in J/(kg.K), 300 to 1000 K: isooctane and
     * ethanol, mixed by the fuel's share of alcohol. Fitted to handbook values at 300, 600 and 1000 K (from memory: isooctane 1.65,
     * 2.8 and 3.8, ethanol 1.42, 2.4 and 3.15 kJ/(kg.K)). Fuel is a fifteenth of a charge or less, a tenth with ethanol.
     */
    private static final class FuelVapour {
        static final int TERMS = 3;
        private static final double[] HYDROCARBON = {160, 5.55, -1.9e-3};
        private static final double[] ALCOHOL = {68.6, 5.134, -2.052e-3};

        private FuelVapour() {}

        static double coefficient(EngineFuel fuel, int power) {
            double alcohol = fuel.alcoholShare();
            return alcohol * ALCOHOL[power] + (1 - alcohol) * HYDROCARBON[power];
        }
    }
}
