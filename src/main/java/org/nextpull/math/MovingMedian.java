package org.nextpull.math;

/** The median of the values about each of a row, as many to both sides: fewer at the ends, where there are not so many. */
public final class MovingMedian {
    private MovingMedian() {}

    /**
     * The medians, as many as values.
     *
     * @param values finite
     * @param reach how many to each side
     */
    public static double[] of(double[] values, int reach) {
        double[] medians = new double[values.length];
        double[] near = new double[2 * reach + 1];
        for (int index = 0; index < values.length; index++) {
            int here = Math.min(reach, Math.min(index, values.length - 1 - index));
            medians[index] = middle(values, index - here, 2 * here + 1, near);
        }
        return medians;
    }

    /** The middle one of an odd number of values; a few are put in order by insertion sooner than by a sort that is called for each. */
    private static double middle(double[] values, int first, int count, double[] ordered) {
        for (int taken = 0; taken < count; taken++) {
            double value = values[first + taken];
            int place = taken;
            for (; place > 0 && ordered[place - 1] > value; place--) {
                ordered[place] = ordered[place - 1];
            }
            ordered[place] = value;
        }
        return ordered[count / 2];
    }
}
