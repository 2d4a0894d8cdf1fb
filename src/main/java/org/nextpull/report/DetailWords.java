package org.nextpull.report;

import java.util.Locale;
import java.util.Optional;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.unit.Quantity;
import org.nextpull.unit.Unit;
import org.nextpull.unit.UnitSystem;

/** One detail of a finding as people read it. The hints are those that the head of the catalogue explains. */
final class DetailWords {
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
            return ofQuantity(finding.text(hint.substring(QUANTITY_OF.length())).orElse(""), number);
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
