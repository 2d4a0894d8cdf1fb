package org.nextpull.fuel;

import static org.nextpull.fuel.FuelProperty.ALCOHOL_BY_VOLUME;
import static org.nextpull.fuel.FuelProperty.DENSITY;
import static org.nextpull.fuel.FuelProperty.LOWER_HEATING_VALUE;
import static org.nextpull.fuel.FuelProperty.MOTOR_OCTANE;
import static org.nextpull.fuel.FuelProperty.PRINTED_AIR_FUEL_RATIO;
import static org.nextpull.fuel.FuelProperty.RESEARCH_OCTANE;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.NearestNames;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.unit.Span;

/** The fuels that can be named: the listed ones and a plan's own. Immutable; names match whatever their case and separators. */
public final class Blends {
    /** Octane numbers and grades of pump petrol, with or without the words around them (common practice, no source). */
    private static final Pattern OCTANE =
            Pattern.compile("(?:ron|aki|octane|super|premium|regular|plus|unleaded|8[5-9]|9[0-9]|10[0-5])+");

    private static final Map<String, String> OTHER_NAMES =
            Map.of("gasoline", "petrol", "e0", "petrol", "e100", "ethanol", "m100", "methanol", "avgas", "avgas-100ll");

    /** By their keys; a fuel is worked out where it is asked for, since a plan names one or two of them. */
    private final Map<String, Supplier<Fuel>> fuels;

    private Blends(Map<String, Supplier<Fuel>> fuels) {
        this.fuels = Collections.unmodifiableMap(new LinkedHashMap<>(fuels));
    }

    /** The fuels that come with the tool. */
    public static Blends listed() {
        return new Blends(ListedBlends.all());
    }

    /** These and one more; refused where the name is taken. */
    public Outcome<Blends> with(Fuel fuel, Place place) {
        if (lookUp(fuel.name()).isPresent()) {
            return Outcome.failed(Finding.error(FindingCode.FUEL_NAME_TAKEN, place, Detail.of("name", fuel.name())));
        }
        Map<String, Supplier<Fuel>> more = new LinkedHashMap<>(fuels);
        more.put(key(fuel.name()), () -> fuel);
        return Outcome.of(new Blends(more));
    }

    /** A fuel that an engine can run on. */
    public Outcome<Fuel> find(String name, Place place) {
        return findPart(name, place)
                .then(fuel -> fuel.burns()
                        ? Outcome.of(fuel)
                        : Outcome.failed(
                                Finding.error(FindingCode.FUEL_DOES_NOT_BURN, place, Detail.of("name", name))));
    }

    /** A fuel or another part of a blend, such as water. */
    Outcome<Fuel> findPart(String name, Place place) {
        return lookUp(name).map(Outcome::of).orElseGet(() -> Outcome.failed(unknown(name, place)));
    }

    private Finding unknown(String name, Place place) {
        return OCTANE.matcher(key(name)).matches()
                ? Finding.error(FindingCode.FUEL_NAMED_BY_OCTANE, place, Detail.of("name", name))
                : Finding.error(
                        FindingCode.FUEL_UNKNOWN,
                        place,
                        Detail.of("name", name),
                        Detail.of("nearest", String.join(", ", nearest(name))));
    }

    /** Every fuel that burns, the listed ones first. */
    public List<Fuel> all() {
        return fuels.values().stream().map(Supplier::get).filter(Fuel::burns).toList();
    }

    public List<String> names() {
        return all().stream().map(Fuel::name).toList();
    }

    private Optional<Fuel> lookUp(String name) {
        String key = key(name);
        return Optional.ofNullable(fuels.get(key(OTHER_NAMES.getOrDefault(key, key))))
                .map(Supplier::get);
    }

    private List<String> nearest(String name) {
        List<String> known = new ArrayList<>(names());
        known.addAll(OTHER_NAMES.keySet());
        List<String> near = NearestNames.of(name, known);
        return near.isEmpty() ? names() : near;
    }

    private static String key(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[\\s_.\\-]+", "");
    }

    /** The fuels that come with the tool: pure ones, petrol-alcohol blends by volume, leaded and oxygenated race fuel. */
    private static final class ListedBlends {
        private static final List<Integer> ETHANOL_PERCENT = List.of(5, 10, 15, 20, 25, 27, 30, 50, 70, 85, 98);
        private static final List<Integer> METHANOL_PERCENT = List.of(15, 85);

        /** What stands in print beside the computed figures of a blend. */
        private static final Map<String, Map<FuelProperty, SourcedFigure>> PRINTED = Map.of(
                "e5",
                Map.of(
                        RESEARCH_OCTANE,
                                new SourcedFigure(95, Span.of(95, 98), "EN 228 grades, from memory; read the pump"),
                        MOTOR_OCTANE, new SourcedFigure(85, Span.of(85, 88), "EN 228 grades, from memory"),
                        ALCOHOL_BY_VOLUME,
                                new SourcedFigure(0.05, Span.of(0, 0.05), "EN 228 allows up to 5 %, from memory")),
                "e10",
                Map.of(
                        RESEARCH_OCTANE,
                                new SourcedFigure(95, Span.of(95, 98), "EN 228 grades, from memory; read the pump"),
                        MOTOR_OCTANE, new SourcedFigure(85, Span.of(85, 88), "EN 228 grades, from memory"),
                        PRINTED_AIR_FUEL_RATIO, SourcedFigure.exactly(14.13, "trade list, seen"),
                        ALCOHOL_BY_VOLUME,
                                new SourcedFigure(0.10, Span.of(0, 0.10), "EN 228 allows up to 10 %, from memory")),
                "e15",
                Map.of(PRINTED_AIR_FUEL_RATIO, SourcedFigure.exactly(13.8, "trade list, seen")),
                "e85",
                Map.of(
                        RESEARCH_OCTANE, new SourcedFigure(104, Span.of(102, 107), "from memory"),
                        MOTOR_OCTANE, new SourcedFigure(88, Span.of(87, 90), "from memory"),
                        PRINTED_AIR_FUEL_RATIO, new SourcedFigure(9.8, Span.of(9.7, 9.8), "two trade pages, seen"),
                        ALCOHOL_BY_VOLUME,
                                new SourcedFigure(
                                        0.85, Span.of(0.51, 0.85), "pump grades by season, ASTM D5798, from memory")));

        private ListedBlends() {}

        static Map<String, Supplier<Fuel>> all() {
            Map<String, Supplier<Fuel>> fuels = new LinkedHashMap<>();
            PureFuels.all().forEach(fuel -> fuels.put(key(fuel.name()), () -> fuel));
            ETHANOL_PERCENT.forEach(percent ->
                    fuels.put("e" + percent, () -> withAlcohol("e" + percent, PureFuels.ethanol(), percent / 100.0)));
            METHANOL_PERCENT.forEach(percent ->
                    fuels.put("m" + percent, () -> withAlcohol("m" + percent, PureFuels.methanol(), percent / 100.0)));
            fuels.put(key("ethanol-96"), ListedBlends::hydrousEthanol);
            fuels.put(key("avgas-100ll"), ListedBlends::leadedAviationPetrol);
            fuels.put(key("race-oxygenated"), ListedBlends::oxygenatedRaceFuel);
            fuels.put(key("water"), PureFuels::water);
            return fuels;
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
                            new Part(
                                    first,
                                    (1 - volumeOfSecond) * first.density().orElseThrow()),
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

    /**
     * A fuel in a blend.
     *
     * @param fuel the fuel
     * @param massShare its kg in a kg of the blend
     */
    record Part(Fuel fuel, double massShare) {}
}
