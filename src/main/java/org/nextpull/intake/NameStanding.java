package org.nextpull.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** What the words around a channel's name say about its values, best first. */
enum NameStanding {
    /** Measured, as it came. */
    PLAIN,
    /** Corrected to some standard atmosphere already. */
    CORRECTED,
    /** The greatest of a pull, not each sample. */
    PEAK,
    /** A target, a limit, a correction: not what the engine did. */
    NOT_MEASURED;

    private static final Pattern SIGNS = Pattern.compile("[^\\p{L}\\p{N}%\u00b0]+");
    private static final Pattern CAPITALS =
            Pattern.compile("(?<=[a-z])(?=[A-Z])|(?<=\\p{L})(?=\\p{N})|(?<=[A-Z])(?=[A-Z][a-z])");

    private static final Set<String> FILLERS = setOf("""
            actual act ist istwert measured meas mess messwert current value wert val valeur valor valore sensor
            capteur sensore filtered filt smoothed log logged avg average mean mittel mittelwert moyen moyenne medio
            media ecu ecm can daq raw uncorrected uncorr observed obs mesure mesuree medido misurato misurata
            eff effective effektiv effectif effettivo real reel attuale attuato brut brute
            brutto bruto bruta lordo lorda \u00f8 durchschnitt promedio moy aktuell
            """);
    private static final Set<String> CORRECTED_WORDS = setOf("""
            corrected corr sae din iso std stp ece korrigiert korr corrige corrigee corregido corregida corretto
            corretta norm normalized normiert
            """);
    private static final Set<String> PEAK_WORDS = setOf("""
            max maximum peak spitze maxi maximo massimo picco
            """);
    private static final Set<String> TARGET_WORDS = setOf("""
            target tgt setpoint soll sollwert consigne cible obiettivo objetivo desired demand demanded requested
            request req command commanded cmd error err delta diff deviation correction factor faktor korrektur
            korrekturfaktor gradient derivative status state flag limit limiter min minimum minimo loss losses verlust
            friction drag schlepp stft ltft learned threshold schwelle warning alarm stddev noise
            """);

    static NameStanding of(List<String> words) {
        NameStanding worst = PLAIN;
        for (String word : words) {
            NameStanding standing = TARGET_WORDS.contains(word)
                    ? NOT_MEASURED
                    : PEAK_WORDS.contains(word) ? PEAK : CORRECTED_WORDS.contains(word) ? CORRECTED : PLAIN;
            worst = standing.compareTo(worst) > 0 ? standing : worst;
        }
        return worst;
    }

    /** Whether a word only says more about a channel, without being part of its name. */
    static boolean isQualifier(String word) {
        return FILLERS.contains(word) || CORRECTED_WORDS.contains(word) || PEAK_WORDS.contains(word);
    }

    /** Whether a word says anything here. */
    static boolean isKnown(String word) {
        return isQualifier(word) || TARGET_WORDS.contains(word);
    }

    /** The words of a name in small letters, parted at signs, blanks and capitals: {@code EngineSpeed_act} is three. */
    static List<String> words(String name) {
        List<String> words = new ArrayList<>();
        for (String part : SIGNS.split(name, -1)) {
            for (String word : CAPITALS.split(part, -1)) {
                if (!word.isEmpty()) {
                    words.add(CompactName.of(word).text());
                }
            }
        }
        return words;
    }

    private static Set<String> setOf(String words) {
        return Set.of(words.strip().split("\\s+"));
    }
}
