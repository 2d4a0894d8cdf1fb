package org.nextpull.intake;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.nextpull.unit.Quantity;
import org.nextpull.unit.Unit;

/** Unit symbols as they stand in headers, where blanks and signs are often replaced. */
final class UnitText {
    private static final Pattern SIGNS_BEFORE = Pattern.compile("^[\\s_/,.:;=-]+(?=.)");
    private static final Pattern BLANKS = Pattern.compile("\\s+");
    private static final Pattern WORD_IN = Pattern.compile("(?i)^in[ _]+");
    private static final Pattern DOTS_AND_BLANKS = Pattern.compile("[. ]");
    private static final Pattern FULL_STOP = Pattern.compile("\\.$");

    private UnitText() {}

    /** The unit of a quantity that a text means: {@code km_h}, {@code in °C}, {@code [lb ft]}. */
    static Optional<Unit> parse(String text, Quantity quantity) {
        return variants(text).stream()
                .flatMap(variant -> Unit.parse(variant, quantity).stream())
                .findFirst();
    }

    /** Whether a text is the symbol of any unit. */
    static boolean isUnit(String text) {
        return variants(text).stream().anyMatch(variant -> Unit.parse(variant).isPresent());
    }

    private static List<String> variants(String text) {
        String signed = text.strip().replace("\u2103", "\u00b0C").replace("\u2109", "\u00b0F");
        String bare =
                BLANKS.matcher(SIGNS_BEFORE.matcher(signed).replaceAll("")).replaceAll(" ");
        String word = WORD_IN.matcher(bare).replaceFirst("");
        return List.of(
                bare,
                bare.replace('_', '/'),
                bare.replace('_', ' '),
                bare.replace("_", ""),
                bare.replace(" ", ""),
                DOTS_AND_BLANKS.matcher(bare).replaceAll(""),
                FULL_STOP.matcher(bare).replaceFirst(""),
                word,
                word.replace('_', '/'),
                word.replace('_', ' '));
    }
}
