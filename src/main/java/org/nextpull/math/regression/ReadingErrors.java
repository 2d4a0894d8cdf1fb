package org.nextpull.math.regression;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.nextpull.math.Series;

/**
 * What is known of the errors of readings beside their size: what they share, which of them scatter alike, and how much each counts.
 *
 * @param shared covariance of what readings have in common, such as a slow drift whose size is a prior, in the square of their unit
 * @param groups group of each reading, from 0, none empty; readings of one group scatter alike
 * @param weights of the readings, above 0, at most 1, as {@link OutlierWeights} gives them
 * @param usual variance of a reading of any group as it usually is, with the degrees of freedom that this is worth; empty for none
 * @param known variance of a reading of each group as other readings told it, with their degrees of freedom, one a group; empty where none
 *     did
 * @param allowance how many times the variance of what is shared the error of an estimate allows for, at least 1: coefficients are
 *     weighed for a likely size, and an estimate still holds where it is larger
 */
public record ReadingErrors(
        Covariance shared,
        List<Integer> groups,
        Series weights,
        Optional<VariancePart> usual,
        List<VariancePart> known,
        double allowance) {
    /** Degrees of freedom that the scatter of all readings counts beside that of a group: groups scatter much alike until they show otherwise. */
    private static final double ALIKE = 1;

    /**
     * The same where other readings told of each group, so that a group that scatters otherwise shows it sooner. Simulated in blocks of
     * four, an interval that states 95 % holds in 96 to 97 % with 1 and in 95 to 96 % with 3; with 6 a group that scatters five times as
     * much makes 7 % false claims.
     */
    private static final double ALIKE_AS_TOLD = 3;

    /** A group without freedom of its own borrows nothing from its exact fit. */
    private static final double LEAST_FREEDOM = 1e-6;

    public ReadingErrors {
        groups = List.copyOf(groups);
        known = List.copyOf(known);
        if (shared.size() != groups.size() || weights.size() != groups.size()) {
            throw new IllegalArgumentException("covariance, groups and weights differ in number");
        }
        if (!(weights.min() > 0) || !(allowance >= 1)) {
            throw new IllegalArgumentException("a weight is not above 0, or the allowance is below 1");
        }
    }

    /** The same readings with other weights, above 0, at most 1. */
    public ReadingErrors withWeights(Series newWeights) {
        return new ReadingErrors(shared, groups, newWeights, usual, known, allowance);
    }

    /** The same, with one scatter for all; what is known of a group is not what all are like. */
    ReadingErrors inOneGroup() {
        return new ReadingErrors(
                shared, groups.stream().map(group -> 0).toList(), weights, usual, List.of(), allowance);
    }

    int groupCount() {
        return 1 + groups.stream().mapToInt(Integer::intValue).max().orElse(0);
    }

    /** Degrees of freedom that a group has beside those of its own readings. */
    double freedomBeside(int group) {
        return (usual.isPresent() ? alike() : 0)
                + (known.isEmpty() ? 0 : known.get(group).degreesOfFreedom());
    }

    /** The part of it that other readings told. */
    double freedomTold(int group) {
        return known.isEmpty() ? 0 : known.get(group).degreesOfFreedom() + ALIKE_AS_TOLD - ALIKE;
    }

    private double alike() {
        return known.isEmpty() ? ALIKE : ALIKE_AS_TOLD;
    }

    /** Variance of what is each reading's own, from that of its group at weight 1. */
    double[] own(double[] variances) {
        double[] own = new double[groups.size()];
        for (int row = 0; row < own.length; row++) {
            own[row] = variances[groups.get(row)] / weights.get(row);
        }
        return own;
    }

    /**
     * Variance of a reading of each group, as what the design leaves of the readings tells it. A group's share of the degrees of freedom is what its readings keep of their own: one less leverage each. Where a usual scatter is
     * known, that of all groups counts beside it, and in that the usual one, unless it makes an unsteady day out to be a usual one; where other
     * readings told of the groups, that counts in its place, and for each group as they do.
     */
    List<VariancePart> scatters(Projection projection, double[] own, Series rest) {
        double[] squares = new double[groupCount()];
        double[] freedom = new double[groupCount()];
        for (int row = 0; row < own.length; row++) {
            int group = groups.get(row);
            double weight = weights.get(row);
            double residual = own[row] * rest.get(row);
            squares[group] += weight * residual * residual;
            freedom[group] += weight * own[row] * projection.rest(row);
        }
        if (usual.isPresent()) {
            double variance = common(
                    usual.get(),
                    Arrays.stream(squares).sum(),
                    Arrays.stream(freedom).sum());
            for (int group = 0; group < squares.length; group++) {
                squares[group] += variance * alike();
                freedom[group] += alike();
            }
        }
        for (int group = 0; group < known.size(); group++) {
            VariancePart other = known.get(group);
            squares[group] += other.variance() * other.degreesOfFreedom();
            freedom[group] += other.degreesOfFreedom();
        }
        return IntStream.range(0, squares.length)
                .mapToObj(group -> freedom[group] > LEAST_FREEDOM
                        ? new VariancePart(squares[group] / freedom[group], freedom[group])
                        : new VariancePart(0, LEAST_FREEDOM))
                .toList();
    }

    /** What all groups are like. */
    private double common(VariancePart guessed, double squares, double freedom) {
        double told = known.stream()
                .mapToDouble(part -> part.variance() * part.degreesOfFreedom())
                .sum();
        double worth =
                known.stream().mapToDouble(VariancePart::degreesOfFreedom).sum();
        return known.isEmpty()
                ? Math.max(
                        squares / freedom,
                        (squares + guessed.variance() * guessed.degreesOfFreedom())
                                / (freedom + guessed.degreesOfFreedom()))
                : (squares + told) / (freedom + worth);
    }

    /**
     * One of the independent parts that the variance of an estimate adds up from.
     *
     * @param variance the part, at least 0
     * @param degreesOfFreedom that it was estimated with, above 0
     */
    public record VariancePart(double variance, double degreesOfFreedom) {
        /**
         * Accepts a part of 0, and infinite degrees of freedom.
         *
         * @throws IllegalArgumentException when the variance is negative or NaN, or the degrees of freedom are 0, negative or NaN
         */
        public VariancePart {
            if (!(variance >= 0) || !(degreesOfFreedom > 0)) {
                throw new IllegalArgumentException("not a variance part: " + variance + " on " + degreesOfFreedom);
            }
        }
    }
}
