package org.nextpull.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The unknowns that all readings share: where each stands, what is thought of it, and how far it may go. Drift of the first day,
 * asymmetry, curvature over the rows; spark shift, best lambda, fall and asymmetry of the mixture where there is one; level and drift of
 * each further day.
 */
final class CommonColumns {
    static final int DRIFT = 0;
    static final int ASYMMETRY = 1;
    static final int ASYMMETRY_SLOPE = 2;
    static final int CURVATURE = 3;
    /** Level, slope and two waves of ln curvature. */
    static final int CURVATURES = 4;

    private static final int FIRST_FREE = CURVATURE + CURVATURES;
    private static final double ASYMMETRY_REACH = 0.6;
    private static final double CURVATURE_REACH = 0.7;
    private static final double BEST_LAMBDA_REACH = 12;
    private static final double FALL_REACH = 1.5;
    /** Spread of ln curvature about a node of the grid, against its prior spread: a little more than half a step of the grid. */
    private static final double NODE_SMEAR = 0.45;

    private static final double NO_SHAPE_SD = 1e-6;
    private static final Belief DAY_LEVEL = new Belief(0, 2);

    final int count;
    final Optional<Integer> mixture;
    final double[] mean;
    final double[] sd;
    private final double[] reach;
    private final int firstDay;

    CommonColumns(Surface surface) {
        SurfacePriors priors = surface.priors();
        List<Belief> beliefs = new ArrayList<>();
        List<Double> reaches = new ArrayList<>();
        add(beliefs, reaches, priors.drift(), Double.POSITIVE_INFINITY);
        for (Belief shape : priors.shape()
                .inOrder(new Belief(0, NODE_SMEAR * priors.lnCurvature().sd()))) {
            add(beliefs, reaches, shape, beliefs.size() < CURVATURE ? ASYMMETRY_REACH : CURVATURE_REACH);
        }
        if (!surface.rows().hasShapes()) {
            for (int j = CURVATURE + 1; j < FIRST_FREE; j++) {
                beliefs.set(j, new Belief(0, NO_SHAPE_SD));
            }
        }
        mixture = priors.mixture().map(prior -> FIRST_FREE);
        priors.mixture().ifPresent(prior -> {
            add(beliefs, reaches, prior.sparkShift(), Double.POSITIVE_INFINITY);
            add(beliefs, reaches, prior.best(), BEST_LAMBDA_REACH);
            add(beliefs, reaches, prior.lnFall(), FALL_REACH);
            add(beliefs, reaches, prior.asymmetry(), ASYMMETRY_REACH);
        });
        firstDay = beliefs.size();
        for (int day = 1; day < surface.days(); day++) {
            add(beliefs, reaches, DAY_LEVEL, Double.POSITIVE_INFINITY);
            add(beliefs, reaches, priors.drift(), Double.POSITIVE_INFINITY);
        }
        count = beliefs.size();
        mean = beliefs.stream().mapToDouble(Belief::centre).toArray();
        sd = beliefs.stream().mapToDouble(Belief::sd).toArray();
        reach = reaches.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static void add(List<Belief> beliefs, List<Double> reaches, Belief belief, double reach) {
        beliefs.add(belief);
        reaches.add(reach);
    }

    /** The first column that enters the torque other than in a straight line. */
    int firstCurved() {
        return ASYMMETRY;
    }

    /** One past the last such column. */
    int pastCurved() {
        return firstDay;
    }

    /** Column of the level of a day; the first day's is that of the rows. */
    int level(int day) {
        return firstDay + 2 * (day - 1);
    }

    /** Column of the drift of a day. */
    int drift(int day) {
        return day == 0 ? DRIFT : level(day) + 1;
    }

    /** A value of a column, no further from its prior than a step of linearisation may go. */
    double within(int column, double value) {
        double far = reach[column];
        return Math.max(mean[column] - far, Math.min(mean[column] + far, value));
    }
}
