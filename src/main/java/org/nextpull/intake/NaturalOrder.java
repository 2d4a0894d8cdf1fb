package org.nextpull.intake;

import java.util.Comparator;

/** Order of names as people count: {@code pull-2} before {@code pull-10}; capitals only decide between names that are else equal. */
final class NaturalOrder implements Comparator<String> {
    @Override
    public int compare(String left, String right) {
        int order = compareRuns(left, right);
        return order != 0 ? order : left.compareTo(right);
    }

    private static int compareRuns(String left, String right) {
        int i = 0;
        int j = 0;
        while (i < left.length() && j < right.length()) {
            if (isDigit(left.charAt(i)) && isDigit(right.charAt(j))) {
                int endLeft = endOfDigits(left, i);
                int endRight = endOfDigits(right, j);
                int order = compareNumbers(left.substring(i, endLeft), right.substring(j, endRight));
                if (order != 0) {
                    return order;
                }
                i = endLeft;
                j = endRight;
            } else {
                int order = Character.compare(
                        Character.toLowerCase(left.charAt(i)), Character.toLowerCase(right.charAt(j)));
                if (order != 0) {
                    return order;
                }
                i++;
                j++;
            }
        }
        return Integer.compare(left.length() - i, right.length() - j);
    }

    private static int compareNumbers(String left, String right) {
        String a = left.replaceFirst("^0+(?=.)", "");
        String b = right.replaceFirst("^0+(?=.)", "");
        return a.length() != b.length() ? Integer.compare(a.length(), b.length()) : a.compareTo(b);
    }

    private static int endOfDigits(String text, int from) {
        int end = from;
        while (end < text.length() && isDigit(text.charAt(end))) {
            end++;
        }
        return end;
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
