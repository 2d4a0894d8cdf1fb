package org.nextpull.engine.gas;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.fuel.Blends;
import org.nextpull.fuel.Composition;
import org.nextpull.fuel.DryAir;
import org.nextpull.fuel.Element;
import org.nextpull.fuel.Fuel;
import org.nextpull.fuel.FuelProperty;
import org.nextpull.unit.Lambda;

/**
 * What the cycle needs to know of a fuel.
 *
 * @param name its name
 * @param composition elements by mass
 * @param energy heat of combustion and of evaporation
 * @param density liquid density in kg/m3
 * @param octane octane index: the number of the isooctane-heptane mixture that resists knock as well in such an engine
 * @param flame burning velocity
 */
public record EngineFuel(
        String name, Composition composition, FuelEnergy energy, double density, double octane, Flame flame) {
    private static final double ENGINE_SEVERITY = -0.35;
    private static final double EVAPORATES_K = 40;
    private static final double LIQUID_PER_K = 4e-4;
    private static final double ALCOHOL_OXYGEN = 0.3473;
    private static final double HYDROCARBON_KG_PER_MOL = 0.105;
    private static final double ETHANOL_KG_PER_MOL = 0.04607;

    /**
     * Accepts any positive density and octane index.
     *
     * @throws IllegalArgumentException when one of them is 0, negative or NaN
     */
    public EngineFuel {
        if (!(density > 0) || !(octane > 0)) {
            throw new IllegalArgumentException("not a fuel: density " + density + ", octane " + octane);
        }
    }

    /** A fuel by its listed name. */
    public static Outcome<EngineFuel> named(String name) {
        return Blends.listed().find(name, Place.nowhere()).then(EngineFuel::of);
    }

    /** A listed or blended fuel; refused with a finding for each figure that the cycle needs and the fuel has not. */
    public static Outcome<EngineFuel> of(Fuel fuel) {
        List<Finding> missing = new ArrayList<>();
        double heat = figure(fuel, FuelProperty.LOWER_HEATING_VALUE, missing);
        double latent = figure(fuel, FuelProperty.LATENT_HEAT, missing);
        double density = figure(fuel, FuelProperty.DENSITY, missing);
        double octane = octaneIndex(fuel, figure(fuel, FuelProperty.RESEARCH_OCTANE, missing));
        if (!missing.isEmpty()) {
            return Outcome.failed(missing);
        }
        return Outcome.of(new EngineFuel(
                fuel.name(),
                fuel.composition(),
                new FuelEnergy(heat, latent),
                density,
                octane,
                Flame.ofComposition(fuel.composition())));
    }

    /**
     * {@code OI = RON - K (RON - MON)} with K = -0.35 for engines of today, whose end gas is cooler than that of the rating engine
     * (Kalghatgi G.T., SAE 2001-01-3584, from memory); the research number where no motor number is known.
     */
    private static double octaneIndex(Fuel fuel, double research) {
        double motor = fuel.value(FuelProperty.MOTOR_OCTANE).orElse(research);
        return research - ENGINE_SEVERITY * (research - motor);
    }

    private static double figure(Fuel fuel, FuelProperty property, List<Finding> missing) {
        OptionalDouble value = fuel.value(property);
        if (value.isEmpty()) {
            missing.add(Finding.error(
                    FindingCode.ENGINE_FUEL_LACKS,
                    Place.nowhere(),
                    Detail.of("fuel", fuel.name()),
                    Detail.of("property", property.name().toLowerCase(Locale.ROOT))));
        }
        return value.orElse(1);
    }

    /** Stoichiometric air-fuel ratio by mass, dry air. */
    double stoichiometricRatio() {
        return composition.stoichiometricAirFuelRatio();
    }

    /** Dry air that burns with one kg of fuel, in kg. */
    public double airPerFuel(Lambda lambda) {
        return lambda.value() * stoichiometricRatio();
    }

    /** What evaporating all of the fuel would cool its air by, in K. */
    public double evaporationKelvins(Lambda lambda) {
        return energy.latentHeat() / (airPerFuel(lambda) * DryAir.HEAT_CAPACITY);
    }

    /**
     * The mixture of the vapour that the flame meets. Of a fuel that takes much heat to evaporate a part is still liquid on walls and in
     * drops when the flame comes, so more of it must be metered for the same vapour. The project's own choice, so that the best mixture
     * of alcohols is as rich as common practice has it (no source).
     */
    public Lambda vapourLambda(Lambda metered) {
        double liquid = LIQUID_PER_K * Math.max(0, evaporationKelvins(metered) - EVAPORATES_K);
        return Lambda.of(metered.value() / (1 - liquid));
    }

    public EngineFuel withOctane(double newOctane) {
        return new EngineFuel(name, composition, energy, density, newOctane, flame);
    }

    Elements elements() {
        return new Elements(composition);
    }

    /** Share of alcohol by mass, judged from the oxygen; 1 for ethanol and for methanol. */
    double alcoholShare() {
        return Math.min(1, composition.fraction(Element.OXYGEN) / ALCOHOL_OXYGEN);
    }

    /** Mean molar mass of the vapour in kg/mol. */
    double vapourMolarMass() {
        double alcohol = alcoholShare();
        return 1 / (alcohol / ETHANOL_KG_PER_MOL + (1 - alcohol) / HYDROCARBON_KG_PER_MOL);
    }

    /** Vapour of the fuel per mol of dry air, in mol, when all of it is evaporated. */
    public double vapourPerAir(Lambda lambda) {
        return Air.KG_PER_MOL / (airPerFuel(lambda) * vapourMolarMass());
    }

    /**
     * Energies of a fuel.
     *
     * @param lowerHeatingValue heat of combustion to water vapour in J/kg, above 0
     * @param latentHeat heat of evaporation in J/kg, above 0
     */
    record FuelEnergy(double lowerHeatingValue, double latentHeat) {
        /**
         * Accepts any positive heats.
         *
         * @throws IllegalArgumentException when one of them is 0, negative or NaN
         */
        public FuelEnergy {
            if (!(lowerHeatingValue > 0) || !(latentHeat > 0)) {
                throw new IllegalArgumentException("not a fuel: heat " + lowerHeatingValue + ", latent " + latentHeat);
            }
        }
    }

    /** Atoms of a fuel, in mol per kg, looked up once. */
    static final class Elements {
        private static final double GRAMS_PER_KILOGRAM = 1000;

        private final double carbon;
        private final double hydrogen;
        private final double oxygen;
        private final double nitrogen;

        Elements(Composition composition) {
            this.carbon = moles(composition, Element.CARBON);
            this.hydrogen = moles(composition, Element.HYDROGEN);
            this.oxygen = moles(composition, Element.OXYGEN);
            this.nitrogen = moles(composition, Element.NITROGEN);
        }

        double carbon() {
            return carbon;
        }

        double hydrogen() {
            return hydrogen;
        }

        double oxygen() {
            return oxygen;
        }

        double nitrogen() {
            return nitrogen;
        }

        /** Oxygen that complete combustion takes, in mol O2 per kg: c + h/4 - o/2. */
        double oxygenNeeded() {
            return carbon + hydrogen / 4 - oxygen / 2;
        }

        private static double moles(Composition composition, Element element) {
            return composition.fraction(element) * GRAMS_PER_KILOGRAM / element.gramsPerMole();
        }
    }
}
