package org.nextpull.report;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Properties;
import java.util.function.LongSupplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.unit.Quantity;
import org.nextpull.unit.Unit;
import org.nextpull.unit.UnitSystem;

/**
 * The sentence of each finding. The catalogue {@code findings.properties} has one line a code with the details' names in braces; its
 * head explains the hints that may stand at a name.
 */
public final class FindingText {
    private static final String WITHOUT = ".without-";
    /** A range that is one number. */
    private static final Pattern ONE_NUMBER = Pattern.compile("\\b([0-9]+) to \\1(?= rpm)");

    private static final Pattern SLOT = Pattern.compile("\\{([a-z0-9_]+)(?::([a-z0-9_-]+))?}");

    private final Properties catalogue;
    private final DetailWords words;

    private FindingText(Properties catalogue, DetailWords words) {
        this.catalogue = catalogue;
        this.words = words;
    }

    /** The sentences in the units that people asked for. */
    public static FindingText in(Shown shown) {
        Properties catalogue = new Properties();
        try (InputStreamReader reader = new InputStreamReader(
                Objects.requireNonNull(FindingText.class.getResourceAsStream("findings.properties")),
                StandardCharsets.UTF_8)) {
            catalogue.load(reader);
        } catch (IOException broken) {
            throw new UncheckedIOException("the catalogue of sentences cannot be read", broken);
        }
        return new FindingText(catalogue, new DetailWords(shown));
    }

    /** The sentence alone. */
    public String sentence(Finding finding) {
        String template = template(finding);
        Matcher slot = SLOT.matcher(template);
        StringBuilder text = new StringBuilder();
        while (slot.find()) {
            String filled = fill(finding, slot.group(1), Optional.ofNullable(slot.group(2)));
            slot.appendReplacement(text, Matcher.quoteReplacement(filled));
        }
        slot.appendTail(text);
        return ONE_NUMBER.matcher(text).replaceAll("$1");
    }

    /** The sentence of the code, or the one for a finding that lacks a detail which that sentence speaks of. */
    private String template(Finding finding) {
        String id = finding.code().id();
        return catalogue.stringPropertyNames().stream()
                .filter(key -> key.startsWith(id + WITHOUT))
                .filter(key -> isMissing(finding, key.substring((id + WITHOUT).length())))
                .findFirst()
                .or(() -> Optional.of(id))
                .map(catalogue::getProperty)
                .orElseThrow(() -> new IllegalStateException("no sentence for " + id));
    }

    private static boolean isMissing(Finding finding, String name) {
        return finding.details().stream().noneMatch(detail -> detail.name().equals(name));
    }

    /** The first of several with its place; empty where there is none. */
    public String first(List<Finding> findings) {
        return findings.stream().findFirst().map(this::withPlace).orElse("");
    }

    /** Where it is, what it is and what to do: {@code day.csv, line 12: ...}; what is a pull's names the pull in place of its first line. */
    public String withPlace(Finding finding) {
        String sentence = sentence(finding);
        StringBuilder place = new StringBuilder();
        finding.place().file().filter(file -> !sentence.contains(file)).ifPresent(place::append);
        if (finding.place().pull().isEmpty()) {
            finding.place().line().ifPresent(line -> append(place, "line " + line));
        }
        finding.place().column().ifPresent(column -> append(place, "column " + column));
        finding.place().key().filter(key -> !sentence.contains(key)).ifPresent(key -> append(place, key));
        return place.isEmpty() ? sentence : place + ": " + sentence;
    }

    private static void append(StringBuilder place, String part) {
        place.append(place.isEmpty() ? "" : ", ").append(part);
    }

    private String fill(Finding finding, String name, Optional<String> hint) {
        return detail(finding, name, hint).or(() -> placePart(finding, name)).orElse("?");
    }

    private Optional<String> detail(Finding finding, String name, Optional<String> hint) {
        return finding.details().stream()
                .filter(detail -> detail.name().equals(name))
                .findFirst()
                .map(detail -> words.show(finding, detail, hint));
    }

    private static Optional<String> placePart(Finding finding, String name) {
        return switch (name) {
            case "file" -> finding.place().file();
            case "line" ->
                boxed(
                        finding.place().line().isPresent(),
                        () -> finding.place().line().getAsLong());
            case "column" ->
                boxed(
                        finding.place().column().isPresent(),
                        () -> finding.place().column().getAsInt());
            case "pull" ->
                boxed(
                        finding.place().pull().isPresent(),
                        () -> finding.place().pull().getAsInt());
            case "key" -> finding.place().key();
            default -> Optional.empty();
        };
    }

    private static Optional<String> boxed(boolean present, LongSupplier value) {
        return present ? Optional.of(String.valueOf(value.getAsLong())) : Optional.empty();
    }

    /** One detail of a finding as people read it. The hints are those that the head of the catalogue explains. */
    private static final class DetailWords {
        private static final String QUANTITY_OF = "quantity-of-";

        private final Shown shown;

        DetailWords(Shown shown) {
            this.shown = shown;
        }

        /** The detail in words, by the hint that stands at its name in the sentence. */
        String show(Finding finding, Detail detail, Optional<String> hint) {
            if (detail instanceof Detail.Amount amount) {
                return hint.map(wanted -> number(finding, amount.number(), wanted))
                        .orElseGet(() -> Shown.plain(amount.number()));
            }
            String text = ((Detail.Text) detail).text();
            return hint.filter("words"::equals).isPresent() ? words(text) : text;
        }

        private static String words(String id) {
            return id.replace('_', ' ').replace('-', ' ');
        }

        private String number(Finding finding, double number, String hint) {
            if (hint.startsWith(QUANTITY_OF)) {
                return ofQuantity(
                        finding.text(hint.substring(QUANTITY_OF.length())).orElse(""), number);
            }
            return switch (hint) {
                case "difference" -> shown.difference(number);
                case "barometer" -> barometer(number);
                case "altitude" -> altitude(number);
                default ->
                    hint.matches("[0-9]")
                            ? Shown.fixed(number, Integer.parseInt(hint))
                            : shown.value(Quantity.valueOf(hint.toUpperCase(Locale.ROOT)), number);
            };
        }

        private String ofQuantity(String quantity, double number) {
            return switch (quantity) {
                case "temperature" -> shown.value(Quantity.TEMPERATURE, number);
                case "dry_pressure" -> barometer(number);
                case "lambda", "fraction", "pressure" ->
                    shown.value(Quantity.valueOf(quantity.toUpperCase(Locale.ROOT)), number);
                default -> Shown.fixed(number, 4);
            };
        }

        private boolean isUs() {
            return shown.units() == UnitSystem.US;
        }

        private String barometer(double pascals) {
            Unit unit = isUs() ? Unit.INCH_OF_MERCURY : Unit.KILOPASCAL;
            return Shown.fixed(unit.fromSi(pascals), isUs() ? 2 : 1) + " " + unit.sign();
        }

        private String altitude(double metres) {
            Unit unit = isUs() ? Unit.FOOT : Unit.METRE;
            return Shown.fixed(unit.fromSi(metres), 0) + " " + unit.sign();
        }
    }
}
