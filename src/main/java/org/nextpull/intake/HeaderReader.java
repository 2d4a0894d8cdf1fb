package org.nextpull.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.nextpull.channel.Role;
import org.nextpull.unit.Quantity;
import org.nextpull.unit.Unit;

/** Reads headers: the channel's name, its unit and the number of its sensor, in any of the ways that loggers write them. */
final class HeaderReader {
    private static final Pattern BRACKETS = Pattern.compile("[(\\[{<]([^()\\[\\]{}<>]*)[)\\]}>]");
    private static final Pattern SENSOR = Pattern.compile(
            "(?i)^[\\s_.#-]*(?:(?:bank|cyl(?:inder|indre)?|cil(?:indro)?|zyl(?:inder)?|sensor|sonde|sonda|no|nr|ch|b|s|c|#)?[\\s_.#-]*"
                    + "(\\d{1,2})|(left|right|links|rechts|gauche|droite|front|rear|l|r)(?![\\p{L}]))");
    private static final Pattern LEADING_SENSOR = Pattern.compile(
            "(?i)^(?:bank|cyl(?:inder)?|zyl(?:inder)?|sensor|ch)?[\\s_.#-]*(\\d{1,2})[\\s_.#-]+(?=\\p{L})");
    /** The end of a unit, not the word for the least. */
    private static final Pattern EACH_MINUTE = Pattern.compile("(?i)\\w*/min\\b|\\bmin\\^?[-\u207b][1\u00b9]");

    private static final Pattern QUOTES = Pattern.compile("^[#%'\"]+\\s*|['\"]+$");
    private static final Pattern BLANKS = Pattern.compile("\\s+");
    /** Short for a temperature, as in {@code T° eau}. */
    private static final Pattern T_DEGREES = Pattern.compile("^[Tt]\u00b0[ .]*(?=\\p{L}{2})");

    /** A longer text, such as a whole line, is no name. */
    static final int LONGEST_NAME = 100;

    private static final String SECOND_SIDES = "|right|rechts|droite|rear|r|";

    private final Spellings spellings;
    private final HeaderWords words = HeaderWords.load();

    HeaderReader(Spellings spellings) {
        this.spellings = spellings;
    }

    /**
     * Reads a header.
     *
     * @param header as written
     * @param rowUnit unit that a row below gives for the column
     */
    HeaderName read(String header, Optional<String> rowUnit) {
        if (header.length() > LONGEST_NAME) {
            return new HeaderName(header, List.of(), NameStanding.PLAIN);
        }
        String name = clean(header);
        Optional<String> unit = Optional.empty();
        Matcher brackets = BRACKETS.matcher(name);
        while (brackets.find()) {
            String inside = brackets.group(1);
            boolean words = NameStanding.words(inside).stream().allMatch(HeaderReader::isWordOfName)
                    && !UnitText.isUnit(inside);
            if (!words) {
                unit = Optional.of(inside);
                name = name.substring(0, brackets.start()) + " " + name.substring(brackets.end());
                break;
            }
        }
        String bare = BRACKETS.matcher(name).replaceAll(" $1 ").strip();
        List<String> parts = NameStanding.words(bare);
        NameStanding standing =
                NameStanding.of(NameStanding.words(EACH_MINUTE.matcher(bare).replaceAll(" ")));
        if (bare.isEmpty() && unit.isPresent()) {
            bare = unit.orElseThrow();
            unit = Optional.empty();
        }
        Optional<String> given = unit.or(() -> rowUnit).filter(text -> !text.matches("[\\s/.\u2013\u2014-]*"));
        List<HeaderName.Meaning> meanings = match(bare, given);
        if (meanings.isEmpty()) {
            List<String> kept = parts.stream()
                    .filter(word -> !NameStanding.isQualifier(word))
                    .toList();
            meanings = kept.size() < parts.size() ? match(String.join("_", kept), given) : meanings;
        }
        if (meanings.stream().allMatch(meaning -> meaning.strangeUnit().isPresent())) {
            List<HeaderName.Meaning> byWords = words.meanings(bare, given);
            meanings = byWords.isEmpty() ? meanings : byWords;
        }
        return new HeaderName(header, meanings, standing);
    }

    /** A unit of that quantity in a header whose name is not known, or in the row below it. */
    Optional<Unit> unitIn(String header, Optional<String> rowUnit, Quantity quantity) {
        String name = clean(header);
        Matcher brackets = BRACKETS.matcher(name);
        while (brackets.find()) {
            Optional<Unit> unit = UnitText.parse(brackets.group(1), quantity);
            if (unit.isPresent()) {
                return unit;
            }
        }
        for (int at = 0; at < name.length(); at++) {
            boolean border = at == 0 || !Character.isLetterOrDigit(name.charAt(at - 1));
            Optional<Unit> unit = border ? UnitText.parse(name.substring(at), quantity) : Optional.empty();
            if (unit.isPresent()) {
                return unit;
            }
        }
        return rowUnit.flatMap(text -> UnitText.parse(text, quantity));
    }

    /** Whether a header, or the row below it, names a unit of another quantity; a bare number or sign is none. */
    boolean hasUnitOfOther(String header, Optional<String> rowUnit, Quantity quantity) {
        return unitIn(header, rowUnit, quantity).isEmpty()
                && Arrays.stream(Quantity.values())
                        .filter(other -> other != Quantity.COUNT)
                        .flatMap(other -> unitIn(header, rowUnit, other).stream())
                        .anyMatch(unit -> unit != Unit.FRACTION);
    }

    /** Whether a header speaks of something that no name of that channel does. */
    boolean speaksOfOther(String header, Role role) {
        return words.speaksOfOther(clean(header), role);
    }

    /** Whether any word of a header has to do with a channel. */
    boolean speaksOf(String header, Role role) {
        return words.speaksOf(clean(header), role);
    }

    private static boolean isWordOfName(String word) {
        return NameStanding.isKnown(word)
                || word.matches("bank|cyl|cylinder|zyl|sensor|left|right|wideband|wb|engine|motor|\\d+");
    }

    private static String clean(String header) {
        String bare = QUOTES.matcher(header.strip()).replaceAll("");
        return T_DEGREES.matcher(BLANKS.matcher(bare).replaceAll(" ")).replaceAll("temp ");
    }

    private List<HeaderName.Meaning> match(String name, Optional<String> unit) {
        List<HeaderName.Meaning> direct = matchStart(name, unit, OptionalInt.empty());
        Matcher leading = LEADING_SENSOR.matcher(name);
        if (direct.isEmpty() && leading.find()) {
            return matchStart(name.substring(leading.end()), unit, OptionalInt.of(Integer.parseInt(leading.group(1))));
        }
        return direct;
    }

    private List<HeaderName.Meaning> matchStart(String name, Optional<String> unit, OptionalInt number) {
        CompactName compact = CompactName.of(name);
        List<HeaderName.Meaning> found = new ArrayList<>();
        int length = 0;
        for (Spellings.Spelling spelling : spellings.longestFirst()) {
            int spelt = spelling.compact().length();
            if (!found.isEmpty() && spelt < length) {
                break;
            }
            if (compact.text().startsWith(spelling.compact())) {
                meaning(spelling, compact.originalFrom(spelt), unit, number).ifPresent(found::add);
                length = spelt;
            }
        }
        boolean fits = found.stream().anyMatch(meaning -> meaning.unit().isPresent());
        return fits
                ? found.stream().filter(meaning -> meaning.unit().isPresent()).toList()
                : found;
    }

    /** Reads what stands behind the name: a number, a unit, both or nothing. */
    private static Optional<HeaderName.Meaning> meaning(
            Spellings.Spelling spelling, String tail, Optional<String> unit, OptionalInt leadingNumber) {
        if (tail.isEmpty()) {
            return unit.isPresent() ? withUnit(spelling, unit, leadingNumber) : withoutUnit(spelling, leadingNumber);
        }
        if (unit.isEmpty() && tailUnit(spelling.role(), tail).isPresent()) {
            return withUnit(spelling, Optional.of(tail), leadingNumber);
        }
        Matcher sensor = SENSOR.matcher(tail);
        if (!sensor.find()) {
            return Optional.empty();
        }
        OptionalInt number = OptionalInt.of(
                sensor.group(1) != null
                        ? Integer.parseInt(sensor.group(1))
                        : SECOND_SIDES.contains("|" + sensor.group(2).toLowerCase(java.util.Locale.ROOT) + "|")
                                ? 2
                                : 1);
        String rest = tail.substring(sensor.end()).strip();
        return rest.isEmpty()
                        || (unit.isEmpty() && tailUnit(spelling.role(), rest).isPresent())
                ? meaning(spelling, rest, unit, number)
                : Optional.empty();
    }

    private static Optional<Unit> tailUnit(Role role, String text) {
        return UnitText.parse(text, role.quantity());
    }

    private static Optional<HeaderName.Meaning> withoutUnit(Spellings.Spelling spelling, OptionalInt number) {
        Optional<Unit> own = ownUnit(spelling);
        return spelling.needsUnit() && own.isEmpty()
                ? Optional.empty()
                : Optional.of(new HeaderName.Meaning(spelling.role(), own, Optional.empty(), number, spelling.gauge()));
    }

    private static Optional<Unit> ownUnit(Spellings.Spelling spelling) {
        if (spelling.role().quantity() == Quantity.SPEED) {
            return spelling.compact().matches(".*(rpm|giri|revs|trmin).*") ? Optional.of(Unit.RPM) : Optional.empty();
        }
        return spelling.needsUnit()
                ? Optional.empty()
                : Unit.parse(spelling.compact(), spelling.role().quantity());
    }

    private static Optional<HeaderName.Meaning> withUnit(
            Spellings.Spelling spelling, Optional<String> given, OptionalInt number) {
        Role role = spelling.role();
        String text = given.orElseThrow();
        if (role.isText() && UnitText.isUnit(text)) {
            return Optional.empty();
        }
        if (role.isText() || role.quantity() == Quantity.COUNT) {
            return Optional.of(new HeaderName.Meaning(
                    role, role.isText() ? Optional.empty() : Optional.of(Unit.COUNT), Optional.empty(), number, false));
        }
        if (role == Role.TIME && text.matches(".*([hH]+.*[mM]+|:|\\.000|[yYjJ]{2}).*")) {
            return Optional.of(new HeaderName.Meaning(role, Optional.empty(), Optional.empty(), number, false));
        }
        Optional<Unit> unit = UnitText.parse(text, role.quantity());
        if (unit.isEmpty() && text.strip().equals("1")) {
            return withoutUnit(spelling, number);
        }
        if (unit.isPresent()) {
            return Optional.of(new HeaderName.Meaning(role, unit, Optional.empty(), number, spelling.gauge()));
        }
        Optional<Role> sibling = sibling(role);
        Optional<Unit> siblingUnit = sibling.flatMap(other -> UnitText.parse(text, other.quantity()));
        if (siblingUnit.isPresent()) {
            return Optional.of(
                    new HeaderName.Meaning(sibling.orElseThrow(), siblingUnit, Optional.empty(), number, false));
        }
        return spelling.needsUnit()
                ? Optional.empty()
                : Optional.of(new HeaderName.Meaning(role, Optional.empty(), given, number, spelling.gauge()));
    }

    /** A lambda gauge that shows air-fuel ratios, and the other way round. */
    private static Optional<Role> sibling(Role role) {
        return switch (role) {
            case LAMBDA -> Optional.of(Role.AIR_FUEL_RATIO);
            case AIR_FUEL_RATIO -> Optional.of(Role.LAMBDA);
            default -> Optional.empty();
        };
    }

    /**
     * A header, read.
     *
     * @param header as written
     * @param meanings what it may mean; several where its unit would be needed to tell; none where it is not known
     * @param standing what the words around the name say
     */
    record HeaderName(String header, List<Meaning> meanings, NameStanding standing) {
        boolean isKnown() {
            return !meanings.isEmpty() && standing != NameStanding.NOT_MEASURED;
        }

        /**
         * One thing that a header may mean.
         *
         * @param role the channel
         * @param unit unit that the header or the units row gives
         * @param strangeUnit a unit that is given but does not fit the channel
         * @param number number of the sensor, where the header has one
         * @param gauge whether it is a pressure above that of the air
         */
        public record Meaning(
                Role role, Optional<Unit> unit, Optional<String> strangeUnit, OptionalInt number, boolean gauge) {}
    }
}
