package org.nextpull.fuel;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import org.nextpull.unit.Span;

/** Writes down a listed fuel, a figure a line. */
final class FuelSheet {
    private final String name;
    private final Composition composition;
    private final Map<FuelProperty, SourcedFigure> figures = new EnumMap<>(FuelProperty.class);
    private final Set<Caution> cautions = EnumSet.noneOf(Caution.class);

    private FuelSheet(String name, Composition composition) {
        this.name = name;
        this.composition = composition;
    }

    /** A fuel by its atoms, {@code C2H6O} written as counts of elements. */
    static FuelSheet ofAtoms(String name, Map<Element, Double> atoms) {
        return new FuelSheet(name, Composition.ofAtoms(atoms));
    }

    static FuelSheet ofElements(String name, Map<Element, Double> massFractions) {
        return new FuelSheet(name, new Composition(massFractions));
    }

    FuelSheet figure(FuelProperty property, double value, Span spread, String source) {
        figures.put(property, new SourcedFigure(value, spread, source));
        return this;
    }

    FuelSheet exactly(FuelProperty property, double value, String source) {
        return figure(property, value, Span.of(value, value), source);
    }

    FuelSheet beware(Caution... of) {
        cautions.addAll(Arrays.asList(of));
        return this;
    }

    Fuel fuel() {
        return new Fuel(name, composition, figures, cautions);
    }
}
