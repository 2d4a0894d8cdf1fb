package org.nextpull.engine.gas;

import org.nextpull.fuel.Composition;
import org.nextpull.fuel.Element;

/**
 * Atoms of a fuel, in mol per kg.
 *
 * @param composition elements by mass
 */
record Elements(Composition composition) {
    private static final double GRAMS_PER_KILOGRAM = 1000;

    double carbon() {
        return moles(Element.CARBON);
    }

    double hydrogen() {
        return moles(Element.HYDROGEN);
    }

    double oxygen() {
        return moles(Element.OXYGEN);
    }

    double nitrogen() {
        return moles(Element.NITROGEN);
    }

    /** Oxygen that complete combustion takes, in mol O2 per kg: c + h/4 - o/2. */
    double oxygenNeeded() {
        return carbon() + hydrogen() / 4 - oxygen() / 2;
    }

    private double moles(Element element) {
        return composition.fraction(element) * GRAMS_PER_KILOGRAM / element.gramsPerMole();
    }
}
