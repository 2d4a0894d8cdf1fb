package org.nextpull.fuel;

import org.nextpull.finding.WrittenId;

/** The elements of fuels, with abridged standard atomic masses (CIAAW 2021, from memory). */
public enum Element implements WrittenId {
    CARBON("C", 12.011, 1),
    HYDROGEN("H", 1.008, 0.25),
    OXYGEN("O", 15.999, -0.5),
    /** Leaves the engine as it came. */
    NITROGEN("N", 14.007, 0);

    private final String symbol;
    private final double gramsPerMole;
    private final double oxygenMoleculesPerAtom;

    Element(String symbol, double gramsPerMole, double oxygenMoleculesPerAtom) {
        this.symbol = symbol;
        this.gramsPerMole = gramsPerMole;
        this.oxygenMoleculesPerAtom = oxygenMoleculesPerAtom;
    }

    public String symbol() {
        return symbol;
    }

    /** Molar mass in g/mol. */
    public double gramsPerMole() {
        return gramsPerMole;
    }

    /** Molecules of oxygen that burn one atom to CO2 and H2O; negative for oxygen, which the fuel brings along. */
    double oxygenMoleculesPerAtom() {
        return oxygenMoleculesPerAtom;
    }
}
