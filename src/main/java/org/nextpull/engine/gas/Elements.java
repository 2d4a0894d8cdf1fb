package org.nextpull.engine.gas;

import org.nextpull.fuel.Composition;
import org.nextpull.fuel.Element;

/** Atoms of a fuel, in mol per kg, looked up once. */
final class Elements {
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
