package org.nextpull.compare;

import java.util.List;
import java.util.Optional;
import org.nextpull.math.Estimate;
import org.nextpull.math.Series;
import org.nextpull.math.regression.GroupedFit;
import org.nextpull.math.regression.ReadingErrors;
import org.nextpull.scatter.Repeatability;

/**
 * The fitted day: a level for each label, with the slow change of the day taken out.
 *
 * @param model that was fitted
 * @param orders place of each pull in the day
 * @param unit what one percent is, in the unit of the pulls
 * @param warmUp whether the first pulls show a warm-up
 * @param fit in percent of the mean of the reference; coefficient 0 is the reference, then one difference a label
 */
record DayFit(DayModel model, Series orders, double unit, boolean warmUp, GroupedFit fit) {
    /** The reference first. */
    List<String> labels() {
        return model.labels();
    }

    /** Level of the reference in mid-day, in the unit of the pulls. */
    double referenceLevel() {
        return level(labels().get(0));
    }

    /** Level of a label under the same conditions. */
    double level(String label) {
        return fit.estimate(levelOf(label)).value() * unit;
    }

    /** Level of a label as weights of the coefficients. */
    Series levelOf(String label) {
        int place = labels().indexOf(label);
        return Series.generate(labels().size(), index -> index == 0 || index == place ? 1 : 0);
    }

    /** Difference of two labels as weights of the coefficients. */
    Series contrast(String label, String against) {
        return levelOf(label).minus(levelOf(against));
    }

    /** Difference of two labels in percent of the reference. */
    Estimate differencePercent(String label, String against) {
        return fit.estimate(contrast(label, against)).rescaled(toPercent(), 0);
    }

    /** How many times the variance of a difference from the reference is what the scatter alone would make of it. */
    double driftFactor(String label, List<ComparedPull> pulls) {
        double error = fit.estimate(contrast(label, labels().get(0))).standardError();
        double alone = ofMean(label, pulls) + ofMean(labels().get(0), pulls);
        return alone > 0 ? error * error / alone : 1;
    }

    /** Variance of the mean of a label's pulls by its scatter. */
    private double ofMean(String label, List<ComparedPull> pulls) {
        double weights = 0;
        for (int pull = 0; pull < pulls.size(); pull++) {
            weights += pulls.get(pull).label().equals(label) ? fit.weights().get(pull) : 0;
        }
        return scatter(label).variance() / weights;
    }

    /** Straight change a pull, in percent of the reference. */
    Repeatability.Drift drift() {
        Estimate drift = shared(DayDrift.straight(orders));
        return new Repeatability.Drift(drift.value(), drift.standardError());
    }

    /** What the very first pull lacked or had too much, in percent of the reference; empty unless it shows. */
    Optional<Double> warmUpPercent() {
        return warmUp ? Optional.of(shared(DayDrift.warmUp(orders)).value()) : Optional.empty();
    }

    private Estimate shared(DayDrift.Part part) {
        return fit.sharedPart(part.column(), part.variance()).rescaled(toPercent(), 0);
    }

    /** Scatter of one pull of a label, one standard deviation in percent, with its degrees of freedom. */
    ReadingErrors.VariancePart scatter(String label) {
        return fit.scatters().get(labels().indexOf(label));
    }

    /** From percent of the mean of the reference's pulls to percent of its level in mid-day. */
    double toPercent() {
        return 100 / fit.coefficients().get(0);
    }
}
