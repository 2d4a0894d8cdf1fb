package org.nextpull.fuel;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * Elements of a fuel by mass. What is missing to 1 neither burns nor brings oxygen.
 *
 * @param massFractions kg of each element in a kg of fuel, each from 0 to 1, together at most 1
 */
public record Composition(Map<Element, Double> massFractions) {
    private static final double ROUNDING = 1e-9;

    /**
     * Accepts any fractions that may be parts of one kilogram.
     *
     * @throws IllegalArgumentException when a fraction is negative or NaN, or all together exceed 1 by more than rounding (1e-9)
     */
    public Composition {
        EnumMap<Element, Double> copy = new EnumMap<>(Element.class);
        copy.putAll(massFractions);
        double sum = 0;
        for (double fraction : copy.values()) {
            if (!(fraction >= 0)) {
                throw new IllegalArgumentException("a mass fraction is not negative: " + fraction);
            }
            sum += fraction;
        }
        if (!(sum <= 1 + ROUNDING)) {
            throw new IllegalArgumentException("mass fractions add up to more than 1: " + sum);
        }
        massFractions = Collections.unmodifiableMap(copy);
    }

    /**
     * Composition of a molecule from its atoms; for petrol the atoms for each carbon, such as 1 and 1.87.
     *
     * @param atoms number of each element's atoms, not negative and not all 0; only their ratios count
     * @throws IllegalArgumentException when a number is negative or NaN, or all are 0
     */
    static Composition ofAtoms(Map<Element, Double> atoms) {
        EnumMap<Element, Double> counts = new EnumMap<>(Element.class);
        counts.putAll(atoms);
        double mass = 0;
        for (Map.Entry<Element, Double> entry : counts.entrySet()) {
            mass += entry.getKey().gramsPerMole() * entry.getValue();
        }
        EnumMap<Element, Double> fractions = new EnumMap<>(Element.class);
        for (Map.Entry<Element, Double> entry : counts.entrySet()) {
            fractions.put(entry.getKey(), entry.getKey().gramsPerMole() * entry.getValue() / mass);
        }
        return new Composition(fractions);
    }

    /** Mass fraction of one element, dimensionless, 0 where it is not named. */
    public double fraction(Element element) {
        return massFractions.getOrDefault(element, 0.0);
    }

    /**
     * Kilograms of dry air that burn a kilogram of fuel exactly: K (c + h/4 - o/2)/M for CcHhOo of molar mass M, with K the grams of
     * air for a mole of oxygen. Zero for water, negative for what brings more oxygen than it needs. The balance is that of any textbook
     * (Heywood 1988, section 3.4, from memory).
     */
    public double stoichiometricAirFuelRatio() {
        double molesOxygenPerGram = 0;
        for (Map.Entry<Element, Double> entry : massFractions.entrySet()) {
            Element element = entry.getKey();
            molesOxygenPerGram += entry.getValue() * element.oxygenMoleculesPerAtom() / element.gramsPerMole();
        }
        return DryAir.GRAMS_PER_MOLE_OXYGEN * molesOxygenPerGram;
    }
}
