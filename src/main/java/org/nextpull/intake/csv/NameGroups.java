package org.nextpull.intake.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;

/** Joins the words of a header, whose names hold blanks, into as many names as there are columns, so that most names are known. */
final class NameGroups {
    /** Words that one name may have. */
    private static final int MOST_WORDS = 5;

    private NameGroups() {}

    /**
     * Joins words.
     *
     * @param words in order, more than {@code wanted}
     * @param wanted number of names
     * @param known how many of a list of names are known
     */
    static List<String> join(List<String> words, int wanted, ToIntFunction<List<String>> known) {
        return joinKnown(withUnits(words), wanted, known);
    }

    /** Takes each unit in brackets back to the word before it. */
    private static List<String> withUnits(List<String> words) {
        List<String> joined = new ArrayList<>();
        for (String word : words) {
            if (!joined.isEmpty() && (word.startsWith("(") || word.startsWith("["))) {
                joined.set(joined.size() - 1, joined.get(joined.size() - 1) + " " + word);
            } else {
                joined.add(word);
            }
        }
        return joined;
    }

    private static List<String> joinKnown(List<String> words, int wanted, ToIntFunction<List<String>> known) {
        int[][] best = new int[wanted + 1][words.size() + 1];
        int[][] from = new int[wanted + 1][words.size() + 1];
        for (int names = 0; names <= wanted; names++) {
            for (int end = 0; end <= words.size(); end++) {
                best[names][end] = names == 0 && end == 0 ? 0 : Integer.MIN_VALUE / 2;
            }
        }
        for (int end = 1; end <= words.size(); end++) {
            for (int start = Math.max(0, end - MOST_WORDS); start < end; start++) {
                int gain = known.applyAsInt(List.of(String.join(" ", words.subList(start, end))));
                for (int names = 1; names <= wanted; names++) {
                    if (best[names - 1][start] + gain > best[names][end]) {
                        best[names][end] = best[names - 1][start] + gain;
                        from[names][end] = start;
                    }
                }
            }
        }
        if (best[wanted][words.size()] < 0) {
            return words;
        }
        List<String> joined = new ArrayList<>();
        int end = words.size();
        for (int names = wanted; names > 0; names--) {
            joined.add(0, String.join(" ", words.subList(from[names][end], end)));
            end = from[names][end];
        }
        return joined;
    }
}
