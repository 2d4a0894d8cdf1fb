package org.nextpull.fuel;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.nextpull.unit.Span;

/**
 * The blend that fuels make together: elements, heating value and latent heat by mass, volumes added up. The air-fuel ratio follows
 * from the elements and so mixes by mass; mixed by volume it would be up to 0.8 % too high.
 *
 * @param parts mass shares that add up to 1
 */
record Mixture(List<Blends.Part> parts) {
    Mixture {
        parts = List.copyOf(parts);
    }

    Fuel named(String name) {
        EnumMap<FuelProperty, SourcedFigure> figures = new EnumMap<>(FuelProperty.class);
        for (FuelProperty property : FuelProperty.values()) {
            figure(property).ifPresent(figure -> figures.put(property, figure));
        }
        return new Fuel(name, composition(), figures, cautions());
    }

    private Composition composition() {
        EnumMap<Element, Double> fractions = new EnumMap<>(Element.class);
        for (Blends.Part part : parts) {
            for (Map.Entry<Element, Double> entry :
                    part.fuel().composition().massFractions().entrySet()) {
                fractions.merge(entry.getKey(), part.massShare() * entry.getValue(), Double::sum);
            }
        }
        return new Composition(fractions);
    }

    private Set<Caution> cautions() {
        EnumSet<Caution> all = EnumSet.noneOf(Caution.class);
        for (Caution caution : Caution.values()) {
            double share = parts.stream()
                    .filter(part -> part.fuel().cautions().contains(caution))
                    .mapToDouble(Blends.Part::massShare)
                    .sum();
            if (caution.carriesOver(share)) {
                all.add(caution);
            }
        }
        return all;
    }

    private Optional<SourcedFigure> figure(FuelProperty property) {
        boolean known =
                parts.stream().allMatch(part -> part.fuel().sourced(property).isPresent());
        if (!known || property.mixing() == FuelProperty.Mixing.NONE) {
            return Optional.empty();
        }
        boolean needsVolumes = property.mixing() == FuelProperty.Mixing.BY_VOLUME;
        if (needsVolumes
                && parts.stream().anyMatch(part -> part.fuel().density().isEmpty())) {
            return Optional.empty();
        }
        Span spread = Span.of(
                mixed(property, figure -> figure.spread().low()),
                mixed(property, figure -> figure.spread().high()));
        double value = Math.min(spread.high(), Math.max(spread.low(), mixed(property, SourcedFigure::value)));
        return Optional.of(new SourcedFigure(value, spread, "computed, ideal mixing of " + names()));
    }

    private double mixed(FuelProperty property, ToDoubleFunction<SourcedFigure> of) {
        double sum = 0;
        double weights = 0;
        for (Blends.Part part : parts) {
            double figure = of.applyAsDouble(part.fuel().properties().get(property));
            double weight = weight(part, property.mixing());
            sum += weight * (property.mixing() == FuelProperty.Mixing.OF_VOLUMES ? 1 / figure : figure);
            weights += weight;
        }
        return property.mixing() == FuelProperty.Mixing.OF_VOLUMES ? weights / sum : sum / weights;
    }

    private static double weight(Blends.Part part, FuelProperty.Mixing mixing) {
        return mixing == FuelProperty.Mixing.BY_VOLUME
                ? part.massShare() / part.fuel().density().orElseThrow()
                : part.massShare();
    }

    private String names() {
        return parts.stream().map(part -> part.fuel().name()).collect(Collectors.joining(" and "));
    }
}
