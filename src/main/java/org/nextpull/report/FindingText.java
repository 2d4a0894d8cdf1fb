package org.nextpull.report;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
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

/**
 * The sentence of each finding. The catalogue has one line a code with the details' names in braces; {@code {now:temperature}} turns
 * a value of the project's unit into the one that people read.
 */
public final class FindingText {
    private static final Pattern SLOT = Pattern.compile("\\{([a-z0-9_]+)(?::([a-z_]+))?}");

    private final Properties catalogue;
    private final Shown shown;

    private FindingText(Properties catalogue, Shown shown) {
        this.catalogue = catalogue;
        this.shown = shown;
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
        return new FindingText(catalogue, shown);
    }

    /** The sentence alone. */
    public String sentence(Finding finding) {
        String template = catalogue.getProperty(finding.code().id());
        if (template == null) {
            throw new IllegalStateException("no sentence for " + finding.code().id());
        }
        Matcher slot = SLOT.matcher(template);
        StringBuilder text = new StringBuilder();
        while (slot.find()) {
            String filled = fill(finding, slot.group(1), Optional.ofNullable(slot.group(2)));
            slot.appendReplacement(text, Matcher.quoteReplacement(filled));
        }
        slot.appendTail(text);
        return text.toString();
    }

    /** Where it is, what it is and what to do: {@code day.csv, line 12: ...}. */
    public String withPlace(Finding finding) {
        String sentence = sentence(finding);
        StringBuilder place = new StringBuilder();
        finding.place().file().filter(file -> !sentence.contains(file)).ifPresent(place::append);
        finding.place().line().ifPresent(line -> append(place, "line " + line));
        finding.place().column().ifPresent(column -> append(place, "column " + column));
        finding.place().key().filter(key -> !sentence.contains(key)).ifPresent(key -> append(place, key));
        return place.isEmpty() ? sentence : place + ": " + sentence;
    }

    private static void append(StringBuilder place, String part) {
        place.append(place.isEmpty() ? "" : ", ").append(part);
    }

    private String fill(Finding finding, String name, Optional<String> quantity) {
        return detail(finding, name, quantity)
                .or(() -> placePart(finding, name))
                .orElse("?");
    }

    private Optional<String> detail(Finding finding, String name, Optional<String> quantity) {
        return finding.details().stream()
                .filter(detail -> detail.name().equals(name))
                .findFirst()
                .map(detail -> {
                    if (detail instanceof Detail.Amount amount) {
                        return quantity.map(wanted ->
                                        shown.value(Quantity.valueOf(wanted.toUpperCase(Locale.ROOT)), amount.number()))
                                .orElseGet(() -> Shown.plain(amount.number()));
                    }
                    return ((Detail.Text) detail).text();
                });
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
}
