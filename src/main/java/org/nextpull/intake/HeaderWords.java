package org.nextpull.intake;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.nextpull.channel.Role;
import org.nextpull.unit.Quantity;
import org.nextpull.unit.Unit;

/**
 * Understands names that are spelt in no usual way by the words they are made of: {@code Abgastemp. Kruemmer} speaks of exhaust and of
 * temperature, {@code Roller km/h} of a roller and, by its unit, of a speed. Every word must be known; the table
 * {@code header-words.txt} beside this class holds them.
 */
final class HeaderWords {
    private static final String TABLE = "header-words.txt";
    private static final String NOTHING = "-";
    private static final Pattern BORDER = Pattern.compile("[\\s,;:/_|-]+");
    /** So short a word is one only where it stands alone. */
    private static final int SHORT = 2;

    /** Things that channels of many kinds have. */
    private static final Set<String> OF_MANY =
            Set.of("temperature", "pressure", "speed", "angle", "position", "count", "level", "flow");

    /** Things that together name a channel. */
    private record Combination(Role role, Set<String> things, boolean gauge) {}

    /** What a text speaks of, and the number of a sensor in it. */
    private record Spoken(Set<String> things, OptionalInt number) {}

    private final Map<String, Set<String>> words = new HashMap<>();
    private final List<Combination> combinations = new ArrayList<>();

    private HeaderWords() {}

    static HeaderWords load() {
        HeaderWords loaded = new HeaderWords();
        try (InputStream in = Objects.requireNonNull(HeaderWords.class.getResourceAsStream(TABLE), TABLE);
                BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            reader.lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .forEach(loaded::add);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return loaded;
    }

    private void add(String line) {
        int colon = line.indexOf(':');
        String left = line.substring(0, colon).strip();
        for (String entry : line.substring(colon + 1).split("\\|", -1)) {
            if (left.startsWith("=")) {
                Role role = Role.valueOf(left.substring(1).strip().toUpperCase(Locale.ROOT));
                String things = entry.strip();
                combinations.add(new Combination(role, setOf(things.replaceFirst("^~", "")), things.startsWith("~")));
            } else {
                words.put(CompactName.of(entry).text(), left.equals(NOTHING) ? Set.of() : setOf(left));
            }
        }
    }

    private static Set<String> setOf(String things) {
        return new HashSet<>(Arrays.asList(things.split(" ")));
    }

    /** What a name means; nothing where a word of it is not known, several where only a unit would tell. */
    List<HeaderReader.HeaderName.Meaning> meanings(String name, Optional<String> unit) {
        List<HeaderReader.HeaderName.Meaning> whole = ofWords(name, unit);
        if (!whole.isEmpty() || unit.isPresent()) {
            return whole;
        }
        Matcher border = BORDER.matcher(name);
        while (border.find()) {
            String tail = name.substring(border.end());
            List<HeaderReader.HeaderName.Meaning> cut =
                    UnitText.isUnit(tail) ? ofWords(name.substring(0, border.start()), Optional.of(tail)) : List.of();
            if (!cut.isEmpty()) {
                return cut;
            }
        }
        return List.of();
    }

    /** Whether any word of a name, known or part of one, has to do with a channel and not only with its quantity. */
    boolean speaksOf(String name, Role role) {
        Set<String> own = new HashSet<>();
        combinations.stream().filter(each -> each.role() == role).forEach(each -> own.addAll(each.things()));
        own.removeAll(OF_MANY);
        return thingsIn(name).stream().anyMatch(own::contains);
    }

    /** Whether a name speaks of something that no name of a channel does: a gearbox, or a pressure where it is a temperature. */
    boolean speaksOfOther(String name, Role role) {
        Set<String> things = thingsIn(name);
        return combinations.stream()
                .filter(each -> each.role() == role)
                .noneMatch(each -> each.things().containsAll(things));
    }

    /** What a name speaks of as far as its words are known, whole or part of a longer one. */
    private Set<String> thingsIn(String name) {
        return spoken(name).map(Spoken::things).orElseGet(() -> {
            List<String> parts = NameStanding.words(name);
            String text = String.join("", parts);
            List<String> found = words.keySet().stream()
                    .filter(word -> parts.contains(word) || (word.length() > SHORT + 1 && text.contains(word)))
                    .toList();
            Set<String> things = new HashSet<>();
            found.stream()
                    .filter(word -> found.stream()
                            .noneMatch(longer -> longer.length() > word.length() && longer.contains(word)))
                    .forEach(word -> things.addAll(words.getOrDefault(word, Set.of())));
            return things;
        });
    }

    private List<HeaderReader.HeaderName.Meaning> ofWords(String name, Optional<String> unit) {
        return (name.chars().anyMatch(Character::isLetter) ? spoken(name) : Optional.<Spoken>empty())
                .stream()
                        .flatMap(spoken -> combinations.stream().flatMap(each -> meaning(each, spoken, unit).stream()))
                        .distinct()
                        .toList();
    }

    private static Optional<HeaderReader.HeaderName.Meaning> meaning(
            Combination named, Spoken spoken, Optional<String> unit) {
        Quantity quantity = named.role().quantity();
        boolean counts = quantity == Quantity.COUNT;
        Optional<Unit> known = unit.flatMap(text -> counts ? Optional.of(Unit.COUNT) : UnitText.parse(text, quantity));
        if (unit.isPresent() && known.isEmpty()) {
            return Optional.empty();
        }
        Set<String> things = new HashSet<>(spoken.things());
        boolean alone = things.equals(named.things());
        if (known.isPresent() && !counts) {
            things.add(thing(quantity));
        }
        return alone || things.equals(named.things())
                ? Optional.of(new HeaderReader.HeaderName.Meaning(
                        named.role(), known, Optional.empty(), spoken.number(), named.gauge()))
                : Optional.empty();
    }

    /** What a unit speaks of. */
    private static String thing(Quantity quantity) {
        return switch (quantity) {
            case SPEED, VELOCITY -> "speed";
            case MASS_FLOW -> "flow";
            default -> quantity.name().toLowerCase(Locale.ROOT);
        };
    }

    /** The things that a name speaks of; empty where a word of it is not known. */
    private Optional<Spoken> spoken(String name) {
        List<String> parts = NameStanding.words(name);
        String text = String.join("", parts);
        Set<Integer> borders = new HashSet<>();
        int at = 0;
        for (String part : parts) {
            borders.add(at);
            at += part.length();
        }
        borders.add(at);
        return split(text, borders).map(found -> {
            Set<String> things = new HashSet<>();
            OptionalInt number = OptionalInt.empty();
            for (String word : found) {
                if (isNumber(word)) {
                    number = OptionalInt.of(Integer.parseInt(word));
                } else {
                    things.addAll(words.getOrDefault(word, Set.of()));
                }
            }
            return new Spoken(things, number);
        });
    }

    /** The fewest known words that make up a text. */
    private Optional<List<String>> split(String text, Set<Integer> borders) {
        List<Optional<List<String>>> upTo = new ArrayList<>();
        upTo.add(Optional.of(List.of()));
        for (int end = 1; end <= text.length(); end++) {
            Optional<List<String>> best = Optional.empty();
            for (int start = 0; start < end; start++) {
                String word = text.substring(start, end);
                boolean apart = borders.contains(start) && borders.contains(end);
                if (upTo.get(start).isPresent() && isWord(word, apart)) {
                    List<String> before = upTo.get(start).get();
                    if (best.isEmpty() || before.size() + 1 < best.get().size()) {
                        List<String> longer = new ArrayList<>(before);
                        longer.add(word);
                        best = Optional.of(longer);
                    }
                }
            }
            upTo.add(best);
        }
        return upTo.get(text.length());
    }

    private boolean isWord(String word, boolean apart) {
        return ((apart || word.length() > SHORT) && words.containsKey(word))
                || (apart && (isNumber(word) || NameStanding.isKnown(word)));
    }

    private static boolean isNumber(String word) {
        return word.matches("\\d{1,2}");
    }
}
