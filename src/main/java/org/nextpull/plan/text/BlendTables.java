package org.nextpull.plan.text;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.fuel.BlendRecipe;
import org.nextpull.fuel.Blends;
import org.nextpull.fuel.Element;
import org.nextpull.fuel.FuelProperty;
import org.nextpull.plan.FuelChoice;
import org.nextpull.plan.FuelChoice.OwnBlend.Elements;
import org.nextpull.plan.FuelChoice.OwnBlend.Mixed;
import org.nextpull.plan.text.PlanKey.Range;
import org.nextpull.plan.text.PlanTable.Presence;
import org.nextpull.unit.Unit;

/** The list of tables {@code [[blend]]}, each checked as the fuel that it describes. */
final class BlendTables {
    private static final String BURNT = "Mass fraction.";
    private static final PlanKey<String> NAME = PlanKey.of(
                    "name", KeyFormat.text().allowing("any text, not that of a listed fuel"))
            .needed("needed")
            .said("Name", "How the plan, the settings and the log call it.");
    private static final Map<Element, PlanKey<Double>> ELEMENTS = Map.of(
            Element.CARBON, element(Element.CARBON, BURNT).needed("needed without `of`"),
            Element.HYDROGEN, element(Element.HYDROGEN, BURNT).needed("needed without `of`"),
            Element.OXYGEN, element(Element.OXYGEN, BURNT),
            Element.NITROGEN, element(Element.NITROGEN, "Mass fraction; it does not burn."));
    private static final PlanKey<Double> DENSITY = PlanKey.of(
                    "density_kg_l", KeyFormat.number(Unit.KILOGRAM_PER_LITRE, new Range(0.3, 2)))
            .said("Density", "Density in kg/L; needed for anything by volume.");
    private static final PlanKey<Double> ENERGY = PlanKey.of(
                    "energy_mj_kg", KeyFormat.number(Unit.MEGAJOULE_PER_KILOGRAM, new Range(1, 150)))
            .said("Heating value", "Lower heating value in MJ/kg.");
    private static final PlanKey<Double> LATENT = PlanKey.of(
                    "latent_mj_kg", KeyFormat.number(Unit.MEGAJOULE_PER_KILOGRAM, new Range(0.01, 3)))
            .said("Heat of evaporation", "What evaporates a kilogram, in MJ/kg; cools the charge.");
    private static final PlanKey<Double> OCTANE = PlanKey.of("research_octane", KeyFormat.number(new Range(0, 140)))
            .said("Research octane", "Only the model engine asks this.");
    private static final Map<FuelProperty, PlanKey<Double>> FIGURES = Map.of(
            FuelProperty.DENSITY, DENSITY,
            FuelProperty.LOWER_HEATING_VALUE, ENERGY,
            FuelProperty.LATENT_HEAT, LATENT,
            FuelProperty.RESEARCH_OCTANE, OCTANE);
    private static final PlanKey<Map<String, Double>> OF = PlanKey.of("of", KeyFormat.fractions())
            .said("Mixed from", "What it is mixed from: `{ ethanol = 0.3, e10 = 0.7 }`.");
    private static final PlanKey<BlendRecipe.ShareBy> BY = PlanKey.of("by", KeyFormat.word(BlendRecipe.ShareBy.class))
            .usual(BlendRecipe.ShareBy.VOLUME)
            .said("Fractions by", "What the fractions of `of` count.");

    static final PlanTable<FuelChoice.OwnBlend> TABLE =
            PlanTable.of("blend", Presence.LISTED_IN_TEXT, "Own fuel", "A fuel of your own.", BlendTables::list);

    private final List<FuelChoice.OwnBlend> blends = new ArrayList<>();
    private Blends known = Blends.listed();
    private boolean complete = true;

    private BlendTables() {}

    private static PlanKey<Double> element(Element element, String help) {
        return PlanKey.of(element.id(), KeyFormat.number(Range.FRACTION)).said(element.id(), help);
    }

    private static PlanKey<Double> key(Element element) {
        return Objects.requireNonNull(ELEMENTS.get(element));
    }

    private static void list(PlanTable.Listing<FuelChoice.OwnBlend> keys) {
        keys.key(NAME, FuelChoice.OwnBlend::name);
        for (Element element : Element.values()) {
            keys.maybe(
                    key(element),
                    blend -> elements(blend)
                            .flatMap(found ->
                                    Optional.ofNullable(found.fractions().get(element))));
        }
        keys.maybe(DENSITY, figure(FuelProperty.DENSITY))
                .maybe(ENERGY, figure(FuelProperty.LOWER_HEATING_VALUE))
                .maybe(LATENT, figure(FuelProperty.LATENT_HEAT))
                .maybe(OCTANE, figure(FuelProperty.RESEARCH_OCTANE))
                .maybe(OF, blend -> mixed(blend).map(Mixed::fractions))
                .maybe(BY, blend -> mixed(blend).map(Mixed::by));
    }

    private static Function<FuelChoice.OwnBlend, Optional<Double>> figure(FuelProperty property) {
        return blend -> elements(blend)
                .flatMap(found -> Optional.ofNullable(found.figures().get(property)));
    }

    private static Optional<Elements> elements(FuelChoice.OwnBlend blend) {
        return blend.recipe() instanceof Elements elements ? Optional.of(elements) : Optional.empty();
    }

    private static Optional<Mixed> mixed(FuelChoice.OwnBlend blend) {
        return blend.recipe() instanceof Mixed mixed ? Optional.of(mixed) : Optional.empty();
    }

    static BlendTables read(List<TableReader> tables) {
        BlendTables all = new BlendTables();
        tables.forEach(all::add);
        return all;
    }

    /** Names of all fuels that a plan can have in its tank. */
    static List<String> names(TableReader any) {
        Stream<String> own = any.members(TABLE).stream().flatMap(table -> table.peek(NAME).stream());
        return Stream.concat(Blends.listed().names().stream(), own).toList();
    }

    List<FuelChoice.OwnBlend> blends() {
        return blends;
    }

    /** Listed and own. */
    Blends known() {
        return known;
    }

    /** Whether every own blend could be read, so that a name that is not known is an error. */
    boolean isComplete() {
        return complete;
    }

    private void add(TableReader table) {
        Optional<String> name = table.need(NAME);
        Optional<FuelChoice.OwnBlend> blend =
                recipe(table).flatMap(recipe -> name.map(named -> new FuelChoice.OwnBlend(named, recipe)));
        blend.ifPresent(own -> check(own, table));
        complete &= blend.isPresent();
    }

    private void check(FuelChoice.OwnBlend own, TableReader table) {
        Place place = table.problems().place(table.spot());
        Outcome<Blends> more = own.fuel(known, place).then(fuel -> known.with(fuel, place));
        // a part that is not known may be a blend that could not be read
        table.problems()
                .addAll(more.findings().stream()
                        .filter(finding -> complete || finding.code() != FindingCode.FUEL_UNKNOWN)
                        .toList());
        complete &= more.value().isPresent();
        known = more.value().orElse(known);
        blends.add(own);
    }

    private static Optional<FuelChoice.OwnBlend.Recipe> recipe(TableReader table) {
        Elements elements = elements(table);
        Optional<Map<String, Double>> parts = table.find(OF);
        BlendRecipe.ShareBy by = table.get(BY);
        if (!table.has(OF)) {
            return fromElements(table, elements);
        }
        Stream.concat(Stream.of(Element.values()).map(BlendTables::key), FIGURES.values().stream())
                .filter(table::has)
                .forEach(key ->
                        table.problems().conflict(FindingCode.PLAN_KEY_MEANINGLESS, table.spot(key), table.spot(OF)));
        return parts.map(fractions -> new Mixed(fractions, by));
    }

    private static Elements elements(TableReader table) {
        Map<Element, Double> fractions = new EnumMap<>(Element.class);
        for (Element element : Element.values()) {
            table.find(key(element)).ifPresent(present -> fractions.put(element, present));
        }
        Map<FuelProperty, Double> figures = new EnumMap<>(FuelProperty.class);
        FIGURES.forEach((property, key) -> table.find(key).ifPresent(present -> figures.put(property, present)));
        return new Elements(fractions, figures);
    }

    private static Optional<FuelChoice.OwnBlend.Recipe> fromElements(TableReader table, Elements elements) {
        if (table.has(BY)) {
            table.problems().conflict(FindingCode.PLAN_KEY_NEEDED, table.spot(OF), table.spot(BY));
        }
        table.require(key(Element.CARBON));
        table.require(key(Element.HYDROGEN));
        boolean readable = elements.fractions().containsKey(Element.CARBON)
                && elements.fractions().containsKey(Element.HYDROGEN);
        return readable ? Optional.of(elements) : Optional.empty();
    }
}
