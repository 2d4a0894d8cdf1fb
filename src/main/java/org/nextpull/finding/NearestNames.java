package org.nextpull.finding;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * Known names that somebody may have meant by a name that is not known: by edit distance (insert, delete, replace, swap of
 * neighbours), case and separators aside.
 */
public final class NearestNames {
    private static final int MOST = 3;

    private NearestNames() {}

    /**
     * Up to three known names, nearest first; of equally near ones the alphabetically first. A name that shares less than half of
     * its letters is not suggested.
     */
    public static List<String> of(String wanted, Collection<String> known) {
        String plain = plain(wanted);
        return known.stream()
                .map(name -> new Candidate(name, distance(plain, plain(name))))
                .filter(candidate -> candidate.isNear(plain))
                .sorted(Comparator.comparingInt(Candidate::distance).thenComparing(Candidate::name))
                .limit(MOST)
                .map(Candidate::name)
                .toList();
    }

    private record Candidate(String name, int distance) {
        boolean isNear(String wanted) {
            String mine = plain(name);
            boolean contained = wanted.length() >= 2 && (mine.contains(wanted) || wanted.contains(mine));
            return contained || 2 * distance <= Math.max(mine.length(), wanted.length());
        }
    }

    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[\\s_.\\-]+", "");
    }

    private static int distance(String a, String b) {
        int[][] cost = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                cost[i][j] = cheapest(a, b, new Cell(i, j), cost);
            }
        }
        return cost[a.length()][b.length()];
    }

    private record Cell(int i, int j) {}

    private static int cheapest(String a, String b, Cell cell, int[][] cost) {
        int i = cell.i();
        int j = cell.j();
        if (i == 0 || j == 0) {
            return i + j;
        }
        int replaced = cost[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        int best = Math.min(replaced, 1 + Math.min(cost[i - 1][j], cost[i][j - 1]));
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(best, 1 + cost[i - 2][j - 2]) : best;
    }
}
