package org.nextpull.fuel;

import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A fuel, or a part of one.
 *
 * @param name as plans and logs write it
 * @param composition elements by mass
 * @param properties what is known beside the elements; what is not known is absent
 * @param cautions what to beware of
 */
public record Fuel(
        String name, Composition composition, Map<FuelProperty, SourcedFigure> properties, Set<Caution> cautions) {
    /** Below this ratio a substance brings as much oxygen as it needs. */
    private static final double SMALLEST_RATIO = 0.5;

    public Fuel {
        EnumMap<FuelProperty, SourcedFigure> copy = new EnumMap<>(FuelProperty.class);
        copy.putAll(properties);
        properties = Collections.unmodifiableMap(copy);
        EnumSet<Caution> set = EnumSet.noneOf(Caution.class);
        set.addAll(cautions);
        cautions = Collections.unmodifiableSet(set);
    }

    /** Kilograms of air that burn a kilogram of it exactly, from the elements; not positive for water. */
    public double stoichiometricAirFuelRatio() {
        return composition.stoichiometricAirFuelRatio();
    }

    /** Whether it needs air at all; water does not. */
    public boolean burns() {
        return stoichiometricAirFuelRatio() > SMALLEST_RATIO;
    }

    /** A looked-up figure with its source. */
    public Optional<SourcedFigure> sourced(FuelProperty property) {
        return Optional.ofNullable(properties.get(property));
    }

    /** A looked-up figure in the project's unit of its quantity, {@link FuelProperty#quantity}; empty where it is not known. */
    public OptionalDouble value(FuelProperty property) {
        SourcedFigure found = properties.get(property);
        return found == null ? OptionalDouble.empty() : OptionalDouble.of(found.value());
    }

    /** Density in kg/m3 at 15 to 20 degC; empty where it is not known. */
    public OptionalDouble density() {
        return value(FuelProperty.DENSITY);
    }

    /** Lower heating value in J/kg; empty where it is not known. */
    public OptionalDouble lowerHeatingValue() {
        return value(FuelProperty.LOWER_HEATING_VALUE);
    }

    /**
     * The scale on which lambda 1 is this fuel's own stoichiometric ratio.
     *
     * @throws IllegalArgumentException for what needs no air, such as water
     */
    public LambdaScale scale() {
        return LambdaScale.of(stoichiometricAirFuelRatio());
    }

    Fuel named(String newName) {
        return new Fuel(newName, composition, properties, cautions);
    }

    /** The same fuel with figures that outrank or complete those it has. */
    Fuel with(Map<FuelProperty, SourcedFigure> figures) {
        EnumMap<FuelProperty, SourcedFigure> all = new EnumMap<>(FuelProperty.class);
        all.putAll(properties);
        all.putAll(figures);
        return new Fuel(name, composition, all, cautions);
    }

    Fuel with(Caution caution) {
        EnumSet<Caution> all = EnumSet.of(caution);
        all.addAll(cautions);
        return new Fuel(name, composition, properties, all);
    }
}
