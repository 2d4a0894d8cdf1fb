package org.nextpull.plan.text;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.fuel.Blends;
import org.nextpull.fuel.Element;
import org.nextpull.fuel.ShareBy;
import org.nextpull.plan.OwnBlend;
import org.nextpull.plan.OwnBlend.Elements;
import org.nextpull.plan.OwnBlend.Mixed;
import org.nextpull.unit.Unit;

/** The list of tables {@code [[blend]]}, each checked as the fuel that it describes. */
final class BlendTables {
    private static final Range FRACTION = new Range(0, 1);
    private static final String OF = "of";
    private static final String BY = "by";
    private static final String DENSITY = "density_kg_l";
    private static final String ENERGY = "energy_mj_kg";

    private final List<OwnBlend> blends = new ArrayList<>();
    private Blends known = Blends.listed();
    private boolean complete = true;

    private BlendTables() {}

    static BlendTables read(List<TableReader> tables) {
        BlendTables all = new BlendTables();
        tables.forEach(all::add);
        return all;
    }

    List<OwnBlend> blends() {
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
        table.need("name");
        Optional<String> name = table.text("name");
        Optional<OwnBlend> blend = recipe(table).flatMap(recipe -> name.map(named -> new OwnBlend(named, recipe)));
        blend.ifPresent(own -> check(own, table));
        complete &= blend.isPresent();
    }

    private void check(OwnBlend own, TableReader table) {
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

    private static Optional<OwnBlend.Recipe> recipe(TableReader table) {
        Elements elements = elements(table);
        TableReader parts = table.table(OF);
        ShareBy by = table.word(BY, ShareBy.VOLUME);
        if (!table.has(OF)) {
            return fromElements(table, elements);
        }
        Stream.concat(Stream.of(Element.values()).map(Element::id), Stream.of(DENSITY, ENERGY))
                .filter(table::has)
                .forEach(key ->
                        table.problems().conflict(FindingCode.PLAN_KEY_MEANINGLESS, table.spot(key), table.spot(OF)));
        Map<String, Double> fractions = new TreeMap<>();
        for (String part : parts.keys()) {
            parts.number(part, FRACTION).ifPresent(fraction -> fractions.put(part, fraction));
        }
        boolean readable = parts.isPresent() && fractions.size() == parts.keys().size();
        return readable ? Optional.of(new Mixed(fractions, by)) : Optional.empty();
    }

    private static Elements elements(TableReader table) {
        Map<Element, Double> fractions = new EnumMap<>(Element.class);
        for (Element element : Element.values()) {
            OptionalDouble fraction = table.number(element.id(), FRACTION);
            fraction.ifPresent(present -> fractions.put(element, present));
        }
        return new Elements(
                fractions,
                Si.of(Unit.KILOGRAM_PER_LITRE, table.number(DENSITY, new Range(0.3, 2))),
                Si.of(Unit.MEGAJOULE_PER_KILOGRAM, table.number(ENERGY, new Range(1, 150))));
    }

    private static Optional<OwnBlend.Recipe> fromElements(TableReader table, Elements elements) {
        if (table.has(BY)) {
            table.problems().conflict(FindingCode.PLAN_KEY_NEEDED, table.spot(OF), table.spot(BY));
        }
        table.need(Element.CARBON.id());
        table.need(Element.HYDROGEN.id());
        boolean readable = elements.fractions().containsKey(Element.CARBON)
                && elements.fractions().containsKey(Element.HYDROGEN);
        return readable ? Optional.of(elements) : Optional.empty();
    }

    static String write(OwnBlend blend) {
        TableWriter table = new TableWriter("[[blend]]");
        table.text("name", Optional.of(blend.name()));
        if (blend.recipe() instanceof Elements elements) {
            new TreeMap<>(elements.fractions()).forEach((element, fraction) -> table.number(element.id(), fraction));
            table.quantity(DENSITY, Unit.KILOGRAM_PER_LITRE, elements.density());
            table.quantity(ENERGY, Unit.MEGAJOULE_PER_KILOGRAM, elements.heatingValue());
        } else if (blend.recipe() instanceof Mixed mixed) {
            table.raw(OF, inline(mixed.fractions()));
            table.word(BY, mixed.by());
        }
        return table.written();
    }

    private static String inline(Map<String, Double> fractions) {
        return new TreeMap<>(fractions)
                .entrySet().stream()
                        .map(part -> Shown.key(part.getKey()) + " = " + Shown.number(part.getValue()))
                        .collect(Collectors.joining(", ", "{ ", " }"));
    }
}
