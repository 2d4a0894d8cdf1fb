package org.nextpull.fuel;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.NearestNames;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;

/** The fuels that can be named: the listed ones and a plan's own. Immutable; names match whatever their case and separators. */
public final class Blends {
    /** Octane numbers and grades of pump petrol, with or without the words around them (common practice, no source). */
    private static final Pattern OCTANE =
            Pattern.compile("(?:ron|aki|octane|super|premium|regular|plus|unleaded|8[5-9]|9[0-9]|10[0-5])+");

    private static final Map<String, String> OTHER_NAMES =
            Map.of("gasoline", "petrol", "e0", "petrol", "e100", "ethanol", "m100", "methanol", "avgas", "avgas-100ll");

    private final Map<String, Fuel> fuels;

    private Blends(Map<String, Fuel> fuels) {
        this.fuels = Collections.unmodifiableMap(new LinkedHashMap<>(fuels));
    }

    /** The fuels that come with the tool. */
    public static Blends listed() {
        Map<String, Fuel> fuels = new LinkedHashMap<>();
        ListedBlends.all().forEach(fuel -> fuels.put(key(fuel.name()), fuel));
        return new Blends(fuels);
    }

    /** These and one more; refused where the name is taken. */
    public Outcome<Blends> with(Fuel fuel, Place place) {
        if (lookUp(fuel.name()).isPresent()) {
            return Outcome.failed(Finding.error(FindingCode.FUEL_NAME_TAKEN, place, Detail.of("name", fuel.name())));
        }
        Map<String, Fuel> more = new LinkedHashMap<>(fuels);
        more.put(key(fuel.name()), fuel);
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
    public Outcome<Fuel> findPart(String name, Place place) {
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
        return fuels.values().stream().filter(Fuel::burns).toList();
    }

    public List<String> names() {
        return all().stream().map(Fuel::name).toList();
    }

    private Optional<Fuel> lookUp(String name) {
        String key = key(name);
        return Optional.ofNullable(fuels.get(key(OTHER_NAMES.getOrDefault(key, key))));
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
}
