package org.nextpull.intake;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The name that somebody probably meant: the known one that takes the fewest changed letters. */
public final class NearestName {
    private NearestName() {}

    /** The nearest of the known names; empty when none is near. */
    public static Optional<String> of(String written, List<String> known) {
        String compact = CompactName.of(written).text();
        int farthest = Math.max(2, compact.length() / 2);
        return known.stream()
                .filter(name -> !name.isBlank())
                .min(Comparator.comparingInt(
                        name -> distance(compact, CompactName.of(name).text())))
                .filter(name -> distance(compact, CompactName.of(name).text()) <= farthest);
    }

    /** Levenshtein's distance: letters to insert, delete or replace. */
    private static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j < row.length; j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j < row.length; j++) {
                int replaced = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(replaced, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[b.length()];
    }
}
