package org.nextpull.fuel;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.finding.WrittenId;

/** The user's own blends: from elements or from parts, refused with all reasons at once. */
public final class BlendRecipe {
    /** Figures rounded to two or three digits may miss 1 by this much. */
    static final double ROUNDING = 0.0051;

    private BlendRecipe() {}

    /**
     * A fuel from its elements by mass, as a maker's data sheet gives them. What is missing to 1 by more than rounding counts as matter
     * that does not burn, with a warning.
     *
     * @param name name of the blend
     * @param elements mass fractions, each 0 to 1, together at most 1
     * @param figures density and the like where the data sheet gives them
     * @param place where the blend was written
     */
    public static Outcome<Fuel> ofElements(
            String name, Map<Element, Double> elements, Map<FuelProperty, SourcedFigure> figures, Place place) {
        Map<String, Double> fractions = new TreeMap<>();
        elements.forEach((element, fraction) -> fractions.put(element.id(), fraction));
        List<Finding> findings = new ArrayList<>(errors(name, fractions, place));
        if (!findings.isEmpty()) {
            return Outcome.failed(findings);
        }
        double sum = sum(fractions);
        if (sum > 0 && sum < 1 - ROUNDING) {
            findings.add(Finding.warning(
                    FindingCode.FUEL_REMAINDER_INERT, place, Detail.of("name", name), Detail.of("rest", 1 - sum)));
        }
        EnumMap<Element, Double> scaled = new EnumMap<>(Element.class);
        elements.forEach((element, fraction) -> scaled.put(element, fraction / Math.max(1, sum)));
        Fuel fuel = new Fuel(name, new Composition(scaled), figures, Set.of(Caution.FLAMMABLE));
        return Outcome.of(fuel, findings).then(made -> burning(made, place));
    }

    /**
     * A fuel from parts.
     *
     * @param name name of the blend
     * @param shares name of each part and its fraction, together 1
     * @param by what the fractions count
     * @param known where the parts are looked up
     * @param place where the blend was written
     */
    public static Outcome<Fuel> ofParts(
            String name, Map<String, Double> shares, ShareBy by, Blends known, Place place) {
        Map<String, Double> sorted = new TreeMap<>(shares);
        List<Finding> findings = new ArrayList<>(errors(name, sorted, place));
        double sum = sum(sorted);
        if (findings.isEmpty() && sum < 1 - ROUNDING) {
            findings.add(Finding.error(
                    FindingCode.FUEL_PARTS_MISSING, place, Detail.of("name", name), Detail.of("sum", sum)));
        }
        List<Blends.Part> weighed = new ArrayList<>();
        sorted.forEach((part, share) -> {
            Outcome<Fuel> found = known.findPart(part, place);
            findings.addAll(found.findings());
            found.value().ifPresent(fuel -> {
                if (by == ShareBy.VOLUME && fuel.density().isEmpty()) {
                    findings.add(Finding.error(
                            FindingCode.FUEL_DENSITY_UNKNOWN, place, Detail.of("name", name), Detail.of("part", part)));
                }
                weighed.add(new Blends.Part(
                        fuel, by == ShareBy.VOLUME ? share * fuel.density().orElse(1) : share));
            });
        });
        if (findings.stream().anyMatch(Finding::isError)) {
            return Outcome.failed(findings);
        }
        return burning(mixed(name, weighed), place);
    }

    /** The mixture of weighed parts; parts without weight are left out. */
    static Fuel mixed(String name, List<Blends.Part> weighed) {
        double mass = weighed.stream().mapToDouble(Blends.Part::massShare).sum();
        return new Mixture(weighed.stream()
                        .filter(part -> part.massShare() > 0)
                        .map(part -> new Blends.Part(part.fuel(), part.massShare() / mass))
                        .toList())
                .named(name);
    }

    private static Outcome<Fuel> burning(Fuel fuel, Place place) {
        return fuel.burns()
                ? Outcome.of(fuel)
                : Outcome.failed(Finding.error(FindingCode.FUEL_DOES_NOT_BURN, place, Detail.of("name", fuel.name())));
    }

    static double sum(Map<String, Double> fractions) {
        return fractions.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    /** Negative, non-finite and too many: what makes the fractions useless. */
    static List<Finding> errors(String blend, Map<String, Double> fractions, Place place) {
        List<Finding> findings = new ArrayList<>();
        fractions.forEach((part, fraction) -> {
            if (!(fraction >= 0) || !Double.isFinite(fraction)) {
                Detail value = Double.isFinite(fraction)
                        ? Detail.of("value", fraction)
                        : Detail.of("value", "no finite number");
                findings.add(Finding.error(
                        FindingCode.FUEL_FRACTION_NEGATIVE,
                        place,
                        Detail.of("name", blend),
                        Detail.of("part", part),
                        value));
            }
        });
        double sum = sum(fractions);
        if (findings.isEmpty() && sum > 1 + ROUNDING) {
            findings.add(Finding.error(
                    FindingCode.FUEL_FRACTIONS_OVER_ONE, place, Detail.of("name", blend), Detail.of("sum", sum)));
        }
        return findings;
    }

    /** What the shares of a blend count. */
    public enum ShareBy implements WrittenId {
        VOLUME,
        MASS;

        /** Reads {@code by} of a plan's blend. */
        public static Outcome<ShareBy> find(String text, Place place) {
            List<ShareBy> all = Arrays.asList(values());
            return all.stream()
                    .filter(by -> by.id().equals(text))
                    .findFirst()
                    .map(Outcome::of)
                    .orElseGet(() -> Outcome.failed(
                            Finding.error(FindingCode.FUEL_SHARE_UNKNOWN, place, Detail.of("name", text))));
        }
    }
}
