package org.nextpull.plan;

import java.util.Map;

/**
 * A fuel that the operator describes, table {@code [[blend]]}.
 *
 * @param name how the rest of the plan and the settings call it
 * @param recipe what it is made of
 */
public record OwnBlend(String name, Recipe recipe) {

    /** What a blend is made of. */
    public sealed interface Recipe {}

    /**
     * Given by its elements; what is left to 1 counts as inert.
     *
     * @param fractions mass fraction of each element; never negative, together at most 1
     */
    public record Elements(Map<Element, Double> fractions) implements Recipe {
        public Elements {
            fractions = Map.copyOf(fractions);
        }

        public double fraction(Element element) {
            return fractions.getOrDefault(element, 0.0);
        }
    }

    /**
     * Mixed from other blends.
     *
     * @param fractions fraction of each blend by its name; positive, together 1
     * @param by what the fractions are fractions of
     */
    public record Mixed(Map<String, Double> fractions, By by) implements Recipe {
        public Mixed {
            fractions = Map.copyOf(fractions);
        }
    }

    /** The elements that burn or carry oxygen. */
    public enum Element {
        CARBON,
        HYDROGEN,
        OXYGEN
    }

    /** What the fractions of a mixture are fractions of. */
    public enum By {
        VOLUME,
        MASS
    }
}
