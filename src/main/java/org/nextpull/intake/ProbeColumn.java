package org.nextpull.intake;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * What the first rows of a column hold: enough to tell its kind and the magnitude of its values.
 *
 * <p>Values are as written, before any unit.
 */
public final class ProbeColumn {
    private static final Set<String> YES_NO = Set.of(
            "yes", "no", "y", "n", "true", "false", "on", "off", "x", "ja", "nein", "oui", "non", "si", "s\u00ed",
            "s\u00ec", "heard", "none");

    private static final double MOST_RARE = 100;

    private static final int LEAST_RISING = 20;
    private static final double EVEN_SHARE = 0.9;

    private final double[] inOrder;
    private final double[] sorted;
    private final double[] clocks;
    private final int yesNo;
    private final int words;

    private ProbeColumn(double[] inOrder, double[] clocks, int yesNo, int words) {
        this.inOrder = inOrder;
        this.sorted = inOrder.clone();
        Arrays.sort(sorted);
        this.clocks = clocks;
        this.yesNo = yesNo;
        this.words = words;
    }

    /** Looks at the cells of one column, in the order of the rows. */
    public static ProbeColumn of(List<String> cells, NumberStyle style) {
        NumberReader reader = new NumberReader(style);
        double[] values = new double[cells.size()];
        int count = 0;
        double[] clocks = new double[cells.size()];
        int clockCount = 0;
        int yesNo = 0;
        int words = 0;
        for (String cell : cells) {
            NumberReader.Kind kind = reader.read(cell);
            if (kind == NumberReader.Kind.NUMBER) {
                values[count++] = reader.value();
            } else if (isYesNo(cell)) {
                yesNo++;
            } else if (kind == NumberReader.Kind.TEXT && TimeText.seconds(cell).isPresent()) {
                clocks[clockCount++] = TimeText.seconds(cell).getAsDouble();
            } else if (kind == NumberReader.Kind.TEXT) {
                words++;
            }
        }
        return new ProbeColumn(Arrays.copyOf(values, count), Arrays.copyOf(clocks, clockCount), yesNo, words);
    }

    static boolean isYesNo(String cell) {
        return YES_NO.contains(cell.strip().toLowerCase(Locale.ROOT));
    }

    /** Whether no cell holds anything. */
    public boolean isBlank() {
        return inOrder.length + clocks.length + yesNo + words == 0;
    }

    /** Whether most of what it holds are numbers. */
    public boolean isNumeric() {
        return inOrder.length > clocks.length + yesNo + words;
    }

    /** Whether most of what it holds are times of a clock. */
    boolean isClock() {
        return clocks.length > inOrder.length + yesNo + words;
    }

    /** Whether it can be read as yes and no. */
    boolean isYesNo() {
        return yesNo > words + clocks.length;
    }

    public int count() {
        return inOrder.length;
    }

    /** The value below which a share of the values lies; only where there are values. */
    public double quantile(double share) {
        return sorted[(int) Math.round(share * (sorted.length - 1))];
    }

    public double median() {
        return quantile(0.5);
    }

    public double greatest() {
        return quantile(1);
    }

    public double least() {
        return quantile(0);
    }

    /** Median of the steps from row to row that are not zero, in seconds for a clock; 0 where there is none. */
    public double medianStep() {
        double[] series = series();
        double[] steps = new double[Math.max(0, series.length - 1)];
        int count = 0;
        for (int row = 1; row < series.length; row++) {
            double step = Math.abs(series[row] - series[row - 1]);
            if (step > 0) {
                steps[count++] = step;
            }
        }
        Arrays.sort(steps, 0, count);
        return count == 0 ? 0 : steps[count / 2];
    }

    /** Share of the rows that repeat the value of the row before. */
    double repeatedShare() {
        double[] series = series();
        int still = 0;
        for (int row = 1; row < series.length; row++) {
            still += series[row] == series[row - 1] ? 1 : 0;
        }
        return series.length < 2 ? 0 : (double) still / (series.length - 1);
    }

    private double[] series() {
        return isClock() ? clocks : inOrder;
    }

    /** Whether each value is above the one before and most steps are alike, as with time, in more rows than a handful. */
    boolean runs() {
        double step = medianStep();
        long even = IntStream.range(1, inOrder.length)
                .filter(row -> Math.abs(inOrder[row] - inOrder[row - 1] - step) <= step / 2)
                .count();
        return inOrder.length >= LEAST_RISING
                && even >= EVEN_SHARE * (inOrder.length - 1)
                && IntStream.range(1, inOrder.length).allMatch(row -> inOrder[row] > inOrder[row - 1]);
    }

    boolean isWhole() {
        return Arrays.stream(inOrder).allMatch(value -> value == Math.rint(value));
    }

    /** Whether it counts up: whole, never falling except back to zero, risen by two or more, and standing still above zero. */
    boolean isRunningTotal() {
        int rises = 0;
        int stands = 0;
        for (int row = 1; row < inOrder.length; row++) {
            double step = inOrder[row] - inOrder[row - 1];
            if (step < 0 && inOrder[row] != 0) {
                return false;
            }
            if (step < 0 && stands < 2) {
                return false;
            }
            rises += step > 0 ? 1 : 0;
            stands += step == 0 && inOrder[row] > 0 ? 1 : 0;
        }
        return isWhole() && rises >= 2 && stands > 3 * rises;
    }

    /** Whether it looks like counts of something rare: small whole numbers, most of them zero. */
    boolean isRareCount() {
        return inOrder.length > 0 && isWhole() && least() == 0 && median() == 0 && greatest() <= MOST_RARE;
    }

    /** Correlation with another column, -1 to 1; 0 where either stands still or the two do not have as many values. */
    double correlation(ProbeColumn other) {
        int rows = inOrder.length;
        double mean = Arrays.stream(inOrder).average().orElse(0);
        double otherMean = Arrays.stream(other.inOrder).average().orElse(0);
        double both = 0;
        double own = 0;
        double others = 0;
        for (int row = 0; row < rows && rows == other.inOrder.length; row++) {
            double away = inOrder[row] - mean;
            double otherAway = other.inOrder[row] - otherMean;
            both += away * otherAway;
            own += away * away;
            others += otherAway * otherAway;
        }
        return own > 0 && others > 0 ? both / Math.sqrt(own * others) : 0;
    }

    /** The value of the nth row that holds a number. */
    double inOrder(int index) {
        return inOrder[index];
    }
}
