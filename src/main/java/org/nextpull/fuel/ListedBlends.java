package org.nextpull.fuel;

import static org.nextpull.fuel.FuelProperty.ALCOHOL_BY_VOLUME;
import static org.nextpull.fuel.FuelProperty.DENSITY;
import static org.nextpull.fuel.FuelProperty.LOWER_HEATING_VALUE;
import static org.nextpull.fuel.FuelProperty.MOTOR_OCTANE;
import static org.nextpull.fuel.FuelProperty.PRINTED_AIR_FUEL_RATIO;
import static org.nextpull.fuel.FuelProperty.RESEARCH_OCTANE;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.nextpull.unit.Span;

/** The fuels that come with the tool: pure ones, petrol-alcohol blends by volume, leaded and oxygenated race fuel. */
final class ListedBlends {
    private static final List<Integer> ETHANOL_PERCENT = List.of(5, 10, 15, 20, 25, 27, 30, 50, 70, 85, 98);
    private static final List<Integer> METHANOL_PERCENT = List.of(15, 85);

    /** What stands in print beside the computed figures of a blend. */
    private static final Map<String, Map<FuelProperty, Sourced>> PRINTED = Map.of(
            "e5",
            Map.of(
                    RESEARCH_OCTANE, new Sourced(95, Span.of(95, 98), "EN 228 grades, from memory; read the pump"),
                    MOTOR_OCTANE, new Sourced(85, Span.of(85, 88), "EN 228 grades, from memory"),
                    ALCOHOL_BY_VOLUME, new Sourced(0.05, Span.of(0, 0.05), "EN 228 allows up to 5 %, from memory")),
            "e10",
            Map.of(
                    RESEARCH_OCTANE, new Sourced(95, Span.of(95, 98), "EN 228 grades, from memory; read the pump"),
                    MOTOR_OCTANE, new Sourced(85, Span.of(85, 88), "EN 228 grades, from memory"),
                    PRINTED_AIR_FUEL_RATIO, Sourced.exactly(14.13, "trade list, seen"),
                    ALCOHOL_BY_VOLUME, new Sourced(0.10, Span.of(0, 0.10), "EN 228 allows up to 10 %, from memory")),
            "e15",
            Map.of(PRINTED_AIR_FUEL_RATIO, Sourced.exactly(13.8, "trade list, seen")),
            "e85",
            Map.of(
                    RESEARCH_OCTANE, new Sourced(104, Span.of(102, 107), "from memory"),
                    MOTOR_OCTANE, new Sourced(88, Span.of(87, 90), "from memory"),
                    PRINTED_AIR_FUEL_RATIO, new Sourced(9.8, Span.of(9.7, 9.8), "two trade pages, seen"),
                    ALCOHOL_BY_VOLUME,
                            new Sourced(0.85, Span.of(0.51, 0.85), "pump grades by season, ASTM D5798, from memory")));

    private ListedBlends() {}

    static List<Fuel> all() {
        List<Fuel> fuels = new ArrayList<>(PureFuels.all());
        ETHANOL_PERCENT.forEach(percent -> fuels.add(withAlcohol("e" + percent, PureFuels.ethanol(), percent / 100.0)));
        METHANOL_PERCENT.forEach(
                percent -> fuels.add(withAlcohol("m" + percent, PureFuels.methanol(), percent / 100.0)));
        fuels.add(hydrousEthanol());
        fuels.add(leadedAviationPetrol());
        fuels.add(oxygenatedRaceFuel());
        fuels.add(PureFuels.water());
        return List.copyOf(fuels);
    }

    private static Fuel withAlcohol(String name, Fuel alcohol, double volumeShare) {
        return byVolume(name, PureFuels.petrol(), alcohol, volumeShare)
                .with(PRINTED.getOrDefault(name, Map.of()))
                .with(Caution.SEPARATES_WITH_WATER);
    }

    private static Fuel byVolume(String name, Fuel first, Fuel second, double volumeOfSecond) {
        return BlendRecipe.mixed(
                name,
                List.of(
                        new Part(first, (1 - volumeOfSecond) * first.density().orElseThrow()),
                        new Part(second, volumeOfSecond * second.density().orElseThrow())));
    }

    /** Ethanol as distilled: 96 % by volume, the rest water. */
    private static Fuel hydrousEthanol() {
        return byVolume("ethanol-96", PureFuels.ethanol(), PureFuels.water(), 0.04);
    }

    /** Leaded aviation petrol; composition about CH2.1, density and energy by ASTM D910, all from memory. */
    private static Fuel leadedAviationPetrol() {
        return FuelSheet.ofAtoms("avgas-100ll", Map.of(Element.CARBON, 1.0, Element.HYDROGEN, 2.1))
                .figure(DENSITY, 715, Span.of(690, 740), "usual range, from memory")
                .figure(LOWER_HEATING_VALUE, 43.5e6, Span.of(43.5e6, 44.5e6), "ASTM D910 least value, from memory")
                .figure(MOTOR_OCTANE, 99.6, Span.of(99.6, 105), "ASTM D910 least value, from memory")
                .exactly(ALCOHOL_BY_VOLUME, 0, "ASTM D910 allows none, from memory")
                .beware(Caution.FLAMMABLE, Caution.AROMATIC_VAPOUR, Caution.LEAD)
                .fuel();
    }

    /** A race petrol with 3.7 % of oxygen, the usual limit of rule books; its maker's sheet has the true elements. */
    private static Fuel oxygenatedRaceFuel() {
        return FuelSheet.ofElements(
                        "race-oxygenated",
                        Map.of(Element.CARBON, 0.834, Element.HYDROGEN, 0.129, Element.OXYGEN, 0.037))
                .figure(DENSITY, 745, Span.of(720, 785), "limits of competition rules, from memory")
                .figure(RESEARCH_OCTANE, 102, Span.of(95, 102), "limits of competition rules, from memory")
                .beware(Caution.FLAMMABLE, Caution.AROMATIC_VAPOUR, Caution.ATTACKS_SEALS)
                .fuel();
    }
}
