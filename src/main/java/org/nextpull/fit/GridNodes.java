package org.nextpull.fit;

import java.util.Arrays;
import org.nextpull.unit.Span;

/** Where the posterior is evaluated: nodes of peak, curvature, asymmetry and scatter, each with its log prior. */
final class GridNodes {
    private static final double PEAK_STEP = 0.5;
    private static final int MOST_PEAKS = 160;
    private static final int CURVATURES = 9;
    private static final double WIDEST_CURVATURE_STEP = 0.3;
    private static final double CURVATURE_REACH = 2.2;
    private static final int ASYMMETRIES = 7;
    private static final double ASYMMETRY_REACH = 2;
    private static final int SCATTERS = 5;
    private static final double LEAST_SCATTER = 0.10;
    private static final double MOST_SCATTER = 0.90;

    /** The scale of a Student-t with 4 degrees of freedom that spreads like a normal of this standard deviation in its middle. */
    static final double SCALE_OF_NODE = 0.95;

    final double peakStep;
    final double[] peaks;
    final double[] curvatures;
    final double[] asymmetries;
    final double[] scatterScales;
    final double[] peakLogPriors;
    final double[] shapeLogPriors;
    final double[] scatterLogPriors;

    private GridNodes(Axis peakAxis, Axis curvatureAxis, Axis asymmetryAxis, Axis scatterAxis) {
        peaks = peakAxis.nodes;
        peakStep = peaks.length > 1 ? peaks[1] - peaks[0] : PEAK_STEP;
        peakLogPriors = peakAxis.logPriors;
        curvatures = curvatureAxis.nodes;
        asymmetries = asymmetryAxis.nodes;
        scatterScales = scatterAxis.nodes;
        scatterLogPriors = scatterAxis.logPriors;
        shapeLogPriors = new double[curvatures.length * asymmetries.length];
        for (int i = 0; i < curvatures.length; i++) {
            for (int j = 0; j < asymmetries.length; j++) {
                shapeLogPriors[i * asymmetries.length + j] = curvatureAxis.logPriors[i] + asymmetryAxis.logPriors[j];
            }
        }
    }

    static GridNodes of(SweepPriors priors, Span peakSpan) {
        double step = PEAK_STEP;
        while (peakSpan.width() / step > MOST_PEAKS) {
            step *= 2;
        }
        return of(priors, peakSpan, step);
    }

    static GridNodes of(SweepPriors priors, Span peakSpan, double step) {
        return new GridNodes(
                peakAxis(priors.peak(), peakSpan, step),
                curvatureAxis(priors.curvature(), curvatureNodes(priors.curvature())),
                Axis.normal(priors.asymmetry(), ASYMMETRIES, ASYMMETRY_REACH),
                scatterAxis(priors));
    }

    /** Nodes laid where the posterior already is, with the priors unchanged. */
    static GridNodes around(SweepPriors priors, Focus focus) {
        return new GridNodes(
                peakAxis(priors.peak(), focus.peaks(), focus.step()),
                curvatureAxis(priors.curvature(), Axis.normal(focus.lnCurvature(), CURVATURES, CURVATURE_REACH).nodes),
                Axis.normal(priors.asymmetry(), ASYMMETRIES, ASYMMETRY_REACH),
                scatterAxis(priors));
    }

    /** Where to look closer. */
    record Focus(Span peaks, double step, Belief lnCurvature) {}

    private static Axis peakAxis(Belief peak, Span span, double step) {
        int count = (int) Math.floor(span.width() / step + 1e-9) + 1;
        Axis axis = new Axis(count);
        for (int i = 0; i < count; i++) {
            axis.nodes[i] = span.low() + i * step;
            double z = (axis.nodes[i] - peak.centre()) / peak.sd();
            axis.logPriors[i] = -2.5 * Math.log(1 + z * z / 4);
        }
        return axis;
    }

    /** Logs of curvature from one far end of the prior to the other, as many as a wide prior needs. */
    private static double[] curvatureNodes(CurvaturePrior prior) {
        Span reach = prior.reach(CURVATURE_REACH);
        int steps = Math.max(CURVATURES - 1, (int) Math.round(reach.width() / WIDEST_CURVATURE_STEP));
        double[] logs = new double[steps + 1];
        Arrays.setAll(logs, i -> reach.low() + reach.width() * i / steps);
        return logs;
    }

    private static Axis curvatureAxis(CurvaturePrior prior, double[] logs) {
        Axis axis = new Axis(logs.length);
        Arrays.setAll(axis.nodes, i -> Math.exp(logs[i]));
        Arrays.setAll(axis.logPriors, i -> prior.logDensity(logs[i]));
        return axis;
    }

    private static Axis scatterAxis(SweepPriors priors) {
        Axis axis = new Axis(SCATTERS);
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < SCATTERS; i++) {
            double node = LEAST_SCATTER * Math.pow(MOST_SCATTER / LEAST_SCATTER, i / (SCATTERS - 1.0));
            double z = (Math.log(node) - priors.lnScatter().centre())
                    / priors.lnScatter().sd();
            axis.nodes[i] = SCALE_OF_NODE * node;
            axis.logPriors[i] = -z * z / 2 + priors.pooled().logDensity(node);
            highest = Math.max(highest, axis.logPriors[i]);
        }
        for (int i = 0; i < SCATTERS; i++) {
            axis.logPriors[i] -= highest;
        }
        return axis;
    }

    /** The nodes of one quantity. */
    private static final class Axis {
        final double[] nodes;
        final double[] logPriors;

        Axis(int count) {
            nodes = new double[count];
            logPriors = new double[count];
        }

        static Axis normal(Belief belief, int count, double reach) {
            Axis axis = new Axis(count);
            for (int i = 0; i < count; i++) {
                double z = reach * (2.0 * i / (count - 1) - 1);
                axis.nodes[i] = belief.centre() + z * belief.sd();
                axis.logPriors[i] = -z * z / 2;
            }
            return axis;
        }
    }
}
