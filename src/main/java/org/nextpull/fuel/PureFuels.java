package org.nextpull.fuel;

import static org.nextpull.fuel.Element.CARBON;
import static org.nextpull.fuel.Element.HYDROGEN;
import static org.nextpull.fuel.Element.NITROGEN;
import static org.nextpull.fuel.Element.OXYGEN;
import static org.nextpull.fuel.FuelProperty.ALCOHOL_BY_VOLUME;
import static org.nextpull.fuel.FuelProperty.BEST_POWER_LAMBDA;
import static org.nextpull.fuel.FuelProperty.DENSITY;
import static org.nextpull.fuel.FuelProperty.LATENT_HEAT;
import static org.nextpull.fuel.FuelProperty.LOWER_HEATING_VALUE;
import static org.nextpull.fuel.FuelProperty.MOTOR_OCTANE;
import static org.nextpull.fuel.FuelProperty.PRINTED_AIR_FUEL_RATIO;
import static org.nextpull.fuel.FuelProperty.RESEARCH_OCTANE;

import java.util.List;
import java.util.Map;
import org.nextpull.unit.Span;

/** The substances that listed blends are made of, and petrol; densities in kg/m3, energies in J/kg. */
final class PureFuels {
    private static final String TABLE =
            "US Department of Energy table of fuel properties, seen; high and low from other printings";
    private static final String HANDBOOK = "engine handbook (Heywood 1988, appendix D), from memory";
    private static final String MEMORY = "handbooks of chemistry, from memory";
    private static final String PRACTICE = "common practice, no source";
    private static final String DEFINITION = "by definition of the scale";

    private PureFuels() {}

    static List<Fuel> all() {
        return List.of(
                petrol(), ethanol(), methanol(), isooctane(), heptane(), toluene(), mtbe(), etbe(), nitromethane());
    }

    /** Petrol without oxygen, CH1.87; CH1.80 to CH1.87 are printed, 14.50 to 14.60 in air-fuel ratio. */
    static Fuel petrol() {
        return FuelSheet.ofAtoms("petrol", Map.of(CARBON, 1.0, HYDROGEN, 1.87))
                .figure(DENSITY, 745, Span.of(718.96, 778.87), TABLE)
                .figure(LOWER_HEATING_VALUE, 43.44e6, Span.of(41.868e6, 44.194e6), TABLE)
                .figure(LATENT_HEAT, 348.9e3, Span.of(305e3, 350e3), TABLE)
                .figure(RESEARCH_OCTANE, 95, Span.of(91, 98), "EN 228 grades, from memory; read the pump")
                .figure(MOTOR_OCTANE, 85, Span.of(82, 88), "EN 228 grades, from memory")
                .figure(PRINTED_AIR_FUEL_RATIO, 14.7, Span.of(14.5, 14.7), TABLE)
                .figure(BEST_POWER_LAMBDA, 0.88, Span.of(0.85, 0.92), PRACTICE)
                .exactly(ALCOHOL_BY_VOLUME, 0, DEFINITION)
                .beware(Caution.FLAMMABLE, Caution.AROMATIC_VAPOUR)
                .fuel();
    }

    static Fuel ethanol() {
        return FuelSheet.ofAtoms("ethanol", Map.of(CARBON, 2.0, HYDROGEN, 6.0, OXYGEN, 1.0))
                .figure(DENSITY, 794, Span.of(792, 796), TABLE)
                .figure(LOWER_HEATING_VALUE, 26.95e6, Span.of(26.749e6, 26.95e6), TABLE)
                .figure(LATENT_HEAT, 921.1e3, Span.of(840e3, 921.1e3), TABLE)
                .figure(RESEARCH_OCTANE, 108.6, Span.of(107, 111), MEMORY)
                .figure(MOTOR_OCTANE, 89.7, Span.of(89, 92), MEMORY)
                .figure(PRINTED_AIR_FUEL_RATIO, 9, Span.of(9, 9), TABLE)
                .figure(BEST_POWER_LAMBDA, 0.84, Span.of(0.80, 0.88), PRACTICE)
                .exactly(ALCOHOL_BY_VOLUME, 1, DEFINITION)
                .beware(Caution.FLAMMABLE, Caution.INVISIBLE_FLAME, Caution.CORROSIVE, Caution.TAKES_UP_WATER)
                .beware(Caution.ATTACKS_SEALS, Caution.DILUTES_OIL, Caution.HARD_COLD_START)
                .fuel();
    }

    static Fuel methanol() {
        return FuelSheet.ofAtoms("methanol", Map.of(CARBON, 1.0, HYDROGEN, 4.0, OXYGEN, 1.0))
                .figure(DENSITY, 794.45, Span.of(791, 796), TABLE)
                .figure(LOWER_HEATING_VALUE, 20.09e6, Span.of(20.0e6, 20.09e6), TABLE)
                .figure(LATENT_HEAT, 1177e3, Span.of(1103e3, 1177e3), TABLE)
                .figure(RESEARCH_OCTANE, 108.7, Span.of(106, 110), MEMORY)
                .figure(MOTOR_OCTANE, 88.6, Span.of(87, 92), MEMORY)
                .figure(PRINTED_AIR_FUEL_RATIO, 6.47, Span.of(6.4, 6.47), HANDBOOK + "; low end a trade list, seen")
                .figure(BEST_POWER_LAMBDA, 0.80, Span.of(0.75, 0.85), PRACTICE)
                .exactly(ALCOHOL_BY_VOLUME, 1, DEFINITION)
                .beware(Caution.FLAMMABLE, Caution.INVISIBLE_FLAME, Caution.POISONOUS, Caution.CORROSIVE)
                .beware(Caution.TAKES_UP_WATER, Caution.ATTACKS_SEALS, Caution.DILUTES_OIL, Caution.HARD_COLD_START)
                .fuel();
    }

    static Fuel isooctane() {
        return FuelSheet.ofAtoms("isooctane", Map.of(CARBON, 8.0, HYDROGEN, 18.0))
                .figure(DENSITY, 692, Span.of(690, 692), HANDBOOK)
                .figure(LOWER_HEATING_VALUE, 44.3e6, Span.of(44.3e6, 44.6e6), HANDBOOK)
                .exactly(LATENT_HEAT, 308e3, HANDBOOK)
                .exactly(RESEARCH_OCTANE, 100, DEFINITION)
                .exactly(MOTOR_OCTANE, 100, DEFINITION)
                .figure(
                        PRINTED_AIR_FUEL_RATIO,
                        15.13,
                        Span.of(15.03, 15.13),
                        HANDBOOK + "; low end with rounder air, seen")
                .exactly(ALCOHOL_BY_VOLUME, 0, DEFINITION)
                .beware(Caution.FLAMMABLE)
                .fuel();
    }

    static Fuel heptane() {
        return FuelSheet.ofAtoms("n-heptane", Map.of(CARBON, 7.0, HYDROGEN, 16.0))
                .figure(DENSITY, 684, Span.of(682, 688), MEMORY)
                .figure(LOWER_HEATING_VALUE, 44.6e6, Span.of(44.5e6, 44.9e6), MEMORY)
                .figure(LATENT_HEAT, 317e3, Span.of(316e3, 365e3), MEMORY)
                .exactly(RESEARCH_OCTANE, 0, DEFINITION)
                .exactly(MOTOR_OCTANE, 0, DEFINITION)
                .exactly(ALCOHOL_BY_VOLUME, 0, DEFINITION)
                .beware(Caution.FLAMMABLE)
                .fuel();
    }

    static Fuel toluene() {
        return FuelSheet.ofAtoms("toluene", Map.of(CARBON, 7.0, HYDROGEN, 8.0))
                .figure(DENSITY, 867, Span.of(862, 872), MEMORY)
                .figure(LOWER_HEATING_VALUE, 40.5e6, Span.of(40.5e6, 40.9e6), MEMORY)
                .figure(LATENT_HEAT, 412e3, Span.of(360e3, 413e3), MEMORY)
                .figure(RESEARCH_OCTANE, 120, Span.of(116, 124), MEMORY)
                .figure(MOTOR_OCTANE, 109, Span.of(103, 112), MEMORY)
                .exactly(ALCOHOL_BY_VOLUME, 0, DEFINITION)
                .beware(Caution.FLAMMABLE, Caution.AROMATIC_VAPOUR, Caution.ATTACKS_SEALS)
                .fuel();
    }

    static Fuel mtbe() {
        return FuelSheet.ofAtoms("mtbe", Map.of(CARBON, 5.0, HYDROGEN, 12.0, OXYGEN, 1.0))
                .figure(DENSITY, 740, Span.of(735, 746), MEMORY)
                .exactly(LOWER_HEATING_VALUE, 35.102e6, TABLE)
                .figure(LATENT_HEAT, 338e3, Span.of(320e3, 340e3), MEMORY)
                .figure(RESEARCH_OCTANE, 117, Span.of(115, 119), MEMORY)
                .figure(MOTOR_OCTANE, 101, Span.of(98, 103), MEMORY)
                .exactly(ALCOHOL_BY_VOLUME, 0, DEFINITION)
                .beware(Caution.FLAMMABLE, Caution.ATTACKS_SEALS)
                .fuel();
    }

    static Fuel etbe() {
        return FuelSheet.ofAtoms("etbe", Map.of(CARBON, 6.0, HYDROGEN, 14.0, OXYGEN, 1.0))
                .figure(DENSITY, 742, Span.of(736, 750), MEMORY)
                .figure(LOWER_HEATING_VALUE, 36.3e6, Span.of(36.0e6, 36.5e6), MEMORY)
                .figure(LATENT_HEAT, 310e3, Span.of(308e3, 325e3), MEMORY)
                .figure(RESEARCH_OCTANE, 118, Span.of(117, 119), MEMORY)
                .figure(MOTOR_OCTANE, 102, Span.of(101, 103), MEMORY)
                .exactly(ALCOHOL_BY_VOLUME, 0, DEFINITION)
                .beware(Caution.FLAMMABLE, Caution.ATTACKS_SEALS)
                .fuel();
    }

    static Fuel nitromethane() {
        return FuelSheet.ofAtoms("nitromethane", Map.of(CARBON, 1.0, HYDROGEN, 3.0, OXYGEN, 2.0, NITROGEN, 1.0))
                .figure(DENSITY, 1137, Span.of(1130, 1140), MEMORY)
                .figure(
                        LOWER_HEATING_VALUE,
                        10.5e6,
                        Span.of(10.5e6, 11.3e6),
                        "from enthalpies of formation, from memory")
                .figure(LATENT_HEAT, 561e3, Span.of(560e3, 630e3), MEMORY)
                .exactly(PRINTED_AIR_FUEL_RATIO, 1.7, "trade list, seen")
                .exactly(ALCOHOL_BY_VOLUME, 0, DEFINITION)
                .beware(Caution.FLAMMABLE, Caution.EXPLOSIVE, Caution.POISONOUS, Caution.ATTACKS_SEALS)
                .fuel();
    }

    /** Water that came in with alcohol. It enters liquid and leaves as vapour, so its heating value is its heat of evaporation lost. */
    static Fuel water() {
        double evaporation = 2442e3;
        return FuelSheet.ofAtoms("water", Map.of(HYDROGEN, 2.0, OXYGEN, 1.0))
                .exactly(DENSITY, 998.2, "steam tables at 20 degC, from memory")
                .exactly(LOWER_HEATING_VALUE, -evaporation, "steam tables at 25 degC, from memory")
                .exactly(LATENT_HEAT, evaporation, "steam tables at 25 degC, from memory")
                .exactly(ALCOHOL_BY_VOLUME, 0, DEFINITION)
                .fuel();
    }
}
