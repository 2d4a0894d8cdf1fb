package org.nextpull.intake;

import java.util.List;
import java.util.Optional;
import org.nextpull.unit.Quantity;
import org.nextpull.unit.Unit;

/** Unit symbols as they stand in headers, where blanks and signs are often replaced. */
final class UnitText {
    private UnitText() {}

    /** The unit of a quantity that a text means: {@code km_h}, {@code in °C}, {@code [lb ft]}. */
    static Optional<Unit> parse(String text, Quantity quantity) {
        String bare = text.strip()
                .replace("\u2103", "\u00b0C")
                .replace("\u2109", "\u00b0F")
                .replaceAll("^[\\s_/,.:;=-]+(?=.)", "")
                .replaceAll("\\s+", " ");
        for (String variant : variants(bare)) {
            Optional<Unit> unit = Unit.parse(variant, quantity);
            if (unit.isPresent()) {
                return unit;
            }
        }
        return Optional.empty();
    }

    /** Whether a text is the symbol of any unit. */
    static boolean isUnit(String text) {
        for (Quantity quantity : Quantity.values()) {
            if (parse(text, quantity).isPresent()) {
                return true;
            }
        }
        return false;
    }

    private static List<String> variants(String bare) {
        String word = bare.replaceFirst("(?i)^in[ _]+", "");
        return List.of(
                bare,
                bare.replace('_', '/'),
                bare.replace('_', ' '),
                bare.replace("_", ""),
                bare.replace(" ", ""),
                bare.replaceFirst("\\.$", ""),
                word,
                word.replace('_', '/'),
                word.replace('_', ' '));
    }
}
