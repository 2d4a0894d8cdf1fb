package org.nextpull.plan;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.fuel.BlendRecipe;
import org.nextpull.fuel.Blends;
import org.nextpull.fuel.Element;
import org.nextpull.fuel.Fuel;
import org.nextpull.fuel.FuelProperty;
import org.nextpull.fuel.SourcedFigure;

/**
 * The fuel in the tank and the blends that the operator describes: tables {@code [fuel]} and {@code [[blend]]}.
 *
 * @param blend name of a listed blend or of one of {@code own}
 * @param own the plan's own blends; each may be mixed from listed ones and from those before it
 */
public record FuelChoice(Optional<String> blend, List<OwnBlend> own) {
    public FuelChoice {
        own = List.copyOf(own);
    }

    public static FuelChoice defaults() {
        return new FuelChoice(Optional.empty(), List.of());
    }

    /** The listed blends with the plan's own. A plan that was read without an error always has them. */
    public Outcome<Blends> blends() {
        Outcome<Blends> known = Outcome.of(Blends.listed());
        for (OwnBlend blend : own) {
            known = known.then(
                    blends -> blend.fuel(blends, Place.nowhere()).then(fuel -> blends.with(fuel, Place.nowhere())));
        }
        return known;
    }

    /** The fuel in the tank; empty when the plan names none. */
    public Optional<Outcome<Fuel>> inTank() {
        return blend.map(name -> blends().then(known -> known.find(name, Place.nowhere())));
    }

    /**
     * A fuel that the operator describes, table {@code [[blend]]}.
     *
     * @param name how the rest of the plan and the settings call it
     * @param recipe what it is made of
     */
    public record OwnBlend(String name, Recipe recipe) {
        private static final String SOURCE = "the plan";

        /** What a blend is made of. */
        public sealed interface Recipe {}

        /**
         * Given by its elements, as a data sheet does.
         *
         * @param fractions mass fraction of each element
         * @param figures what else it says of the fuel, in the unit of each quantity
         */
        public record Elements(Map<Element, Double> fractions, Map<FuelProperty, Double> figures) implements Recipe {
            public Elements {
                fractions = Map.copyOf(fractions);
                figures = Map.copyOf(figures);
            }
        }

        /**
         * Mixed from other blends.
         *
         * @param fractions fraction of each blend by its name
         * @param by what the fractions are fractions of
         */
        public record Mixed(Map<String, Double> fractions, BlendRecipe.ShareBy by) implements Recipe {
            public Mixed {
                fractions = Map.copyOf(fractions);
            }
        }

        /**
         * The fuel that this describes.
         *
         * @param known the fuels that it may be mixed from
         * @param place where it was written, for findings
         */
        public Outcome<Fuel> fuel(Blends known, Place place) {
            if (recipe instanceof Mixed mixed) {
                return BlendRecipe.ofParts(name, new TreeMap<>(mixed.fractions()), mixed.by(), known, place);
            }
            Elements elements = (Elements) recipe;
            Map<FuelProperty, SourcedFigure> figures = new EnumMap<>(FuelProperty.class);
            elements.figures()
                    .forEach((property, value) -> figures.put(property, SourcedFigure.exactly(value, SOURCE)));
            return BlendRecipe.ofElements(name, elements.fractions(), figures, place);
        }
    }
}
