package org.nextpull.intake;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.nextpull.channel.Role;

/** The spellings of channel names that are recognised, read from the table {@code spellings.txt} beside this class. */
final class Spellings {
    private static final String TABLE = "spellings.txt";

    private final List<Spelling> longestFirst;

    private Spellings(List<Spelling> spellings) {
        this.longestFirst = spellings.stream()
                .sorted(Comparator.comparingInt(
                        (Spelling spelling) -> -spelling.compact().length()))
                .toList();
    }

    static Spellings load() {
        List<Spelling> spellings = new ArrayList<>();
        try (InputStream in = Objects.requireNonNull(Spellings.class.getResourceAsStream(TABLE), TABLE);
                BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            reader.lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .forEach(line -> addLine(line, spellings));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new Spellings(spellings);
    }

    List<Spelling> longestFirst() {
        return longestFirst;
    }

    private static void addLine(String line, List<Spelling> spellings) {
        int colon = line.indexOf(':');
        Role role = Role.valueOf(line.substring(0, colon).strip().toUpperCase(Locale.ROOT));
        for (String text : line.substring(colon + 1).split("\\|", -1)) {
            spellings.add(new Spelling(CompactName.of(text).text(), role, text.contains("!"), text.contains("~")));
        }
    }

    /**
     * One way to write a channel's name.
     *
     * @param compact the spelling in small letters and digits only
     * @param role what it means
     * @param needsUnit whether it counts only beside a unit that fits
     * @param gauge whether it is a pressure above that of the air
     */
    record Spelling(String compact, Role role, boolean needsUnit, boolean gauge) {}
}
