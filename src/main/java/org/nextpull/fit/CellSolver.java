package org.nextpull.fit;

import java.util.Arrays;

/**
 * Level and drift for one shape and one scatter: reweighted least squares for Student-t errors with 4 degrees of freedom and a
 * normal prior on the drift, and the Laplace approximation of the log evidence. Holds scratch arrays; one thread at a time.
 */
final class CellSolver {
    static final double DOF = 4;
    private static final int ROUNDS = 6;
    private static final double SETTLED = 1e-4;
    private static final double MOST_MISFIT = 1e250;
    private static final double LEAST_DRIFT_SD = 1e-5;

    private final double[] readings;
    private final double[] orders;
    private final double driftCentre;
    private final double driftSd;
    private final double[] ratios;
    private final double[] levels;

    private double startLevel;
    private double level;
    private double drift;
    private double ratioRatio;
    private double ratioOrder;
    private double orderOrder;
    private double determinant;
    private double misfit;

    CellSolver(double[] readings, double[] orders, Belief driftPrior) {
        this.readings = readings;
        this.orders = orders;
        this.driftCentre = driftPrior.centre();
        this.driftSd = Math.max(driftPrior.sd(), LEAST_DRIFT_SD);
        this.ratios = new double[readings.length];
        this.levels = new double[readings.length];
    }

    /** Sets the response of pull i relative to the peak. */
    void setRatio(int i, double ratio) {
        ratios[i] = ratio;
    }

    /** Call once the ratios of a shape are set. */
    void start() {
        int n = readings.length;
        for (int i = 0; i < n; i++) {
            levels[i] = (readings[i] - driftCentre * orders[i]) / ratios[i];
        }
        insertionSort(levels);
        startLevel = n % 2 == 1 ? levels[n / 2] : (levels[n / 2 - 1] + levels[n / 2]) / 2;
    }

    /** Solves for the scatter and returns the log evidence without priors. */
    double solve(double scale) {
        level = startLevel;
        drift = driftCentre;
        for (int i = 0; i < ROUNDS; i++) {
            if (round(scale) < SETTLED * scale) {
                break;
            }
        }
        return evidence(scale);
    }

    /** One round of reweighted least squares; returns how far level and drift moved. */
    private double round(double scale) {
        double perScale = 1 / (scale * scale);
        double ridge = scale * scale / (driftSd * driftSd);
        double a11 = 0;
        double a12 = 0;
        double a22 = ridge;
        double b1 = 0;
        double b2 = driftCentre * ridge;
        for (int i = 0; i < readings.length; i++) {
            double q = ratios[i];
            double t = orders[i];
            double r = readings[i] - level * q - drift * t;
            double w = (DOF + 1) / (DOF + r * r * perScale);
            double wq = w * q;
            double wt = w * t;
            a11 += wq * q;
            a12 += wq * t;
            a22 += wt * t;
            b1 += wq * readings[i];
            b2 += wt * readings[i];
        }
        double det = a11 * a22 - a12 * a12;
        double newLevel = (b1 * a22 - b2 * a12) / det;
        double newDrift = (a11 * b2 - a12 * b1) / det;
        double moved = Math.abs(newLevel - level) + Math.abs(newDrift - drift);
        level = newLevel;
        drift = newDrift;
        return moved;
    }

    private double fitTerm(double perScale) {
        double product = 1;
        for (int i = 0; i < readings.length; i++) {
            double r = readings[i] - level * ratios[i] - drift * orders[i];
            product = Math.min(product * (1 + r * r * perScale / DOF), MOST_MISFIT);
        }
        misfit = product;
        return -(DOF + 1) / 2 * Math.log(product);
    }

    /** Product over the pulls of 1 + r^2/(4 scale^2) at the last solution: 1 when every pull lies on the curve. */
    double misfit() {
        return misfit;
    }

    /**
     * The most that the fit can add to the log evidence at a scale smaller by {@code shrink}: with c the log of the misfit, the
     * misfit at the smaller scale is at least 1 + shrink^2 (e^c - 1), since that is concave in c and so least when one pull has it all.
     */
    static double fitBound(double misfit, double shrink) {
        return -(DOF + 1) / 2 * Math.log(1 + shrink * shrink * (misfit - 1));
    }

    private double evidence(double scale) {
        int n = readings.length;
        double perScale = 1 / (scale * scale);
        double ridge = scale * scale / (driftSd * driftSd);
        ratioRatio = 0;
        ratioOrder = 0;
        orderOrder = ridge;
        for (int i = 0; i < n; i++) {
            double q = ratios[i];
            double t = orders[i];
            double r = readings[i] - level * q - drift * t;
            double w = (DOF + 1) / (DOF + r * r * perScale);
            ratioRatio += w * q * q;
            ratioOrder += w * q * t;
            orderOrder += w * t * t;
        }
        determinant = ratioRatio * orderOrder - ratioOrder * ratioOrder;
        double z = (drift - driftCentre) / driftSd;
        return fitTerm(perScale) - n * Math.log(scale) - z * z / 2 - Math.log(determinant * perScale * perScale) / 2;
    }

    /** About what the log evidence holds beside the fit and the prior of the drift, for pulls near the peak. */
    double freeTerm(double scale) {
        int n = readings.length;
        double width = 0;
        for (double order : orders) {
            width += order * order;
        }
        double curve = (DOF + 1) / DOF / (scale * scale);
        double determinantNearPeak = n * curve * (width * curve + 1 / (driftSd * driftSd));
        return -n * Math.log(scale) - Math.log(determinantNearPeak) / 2;
    }

    double level() {
        return level;
    }

    double drift() {
        return drift;
    }

    /** Scale^2 times the variance of the level. */
    double levelVariance() {
        return orderOrder / determinant;
    }

    /** Scale^2 times the covariance of level and drift. */
    double covariance() {
        return -ratioOrder / determinant;
    }

    /** Scale^2 times the variance of the drift. */
    double driftVariance() {
        return ratioRatio / determinant;
    }

    /** Weight of pull i at the solution: 1.25 for a pull on the curve, below 0.4 beyond 2.9 scales. */
    double weight(int i, double scale) {
        double r = (readings[i] - level * ratios[i] - drift * orders[i]) / scale;
        return (DOF + 1) / (DOF + r * r);
    }

    private static void insertionSort(double[] values) {
        if (values.length > 20) {
            Arrays.sort(values);
            return;
        }
        for (int i = 1; i < values.length; i++) {
            double value = values[i];
            int j = i - 1;
            while (j >= 0 && values[j] > value) {
                values[j + 1] = values[j];
                j--;
            }
            values[j + 1] = value;
        }
    }
}
