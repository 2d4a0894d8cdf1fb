package org.nextpull.compare;

import java.util.List;
import java.util.Optional;
import org.nextpull.math.Estimate;
import org.nextpull.math.Series;
import org.nextpull.math.regression.GroupedFit;
import org.nextpull.math.regression.VariancePart;

/**
 * The fitted day: a level for each label, the slow change over the pulls, warm-up of the first pulls where they show it.
 *
 * @param labels the reference first
 * @param terms what the model holds besides the labels
 * @param fit coefficient 0 is the reference at the middle of the day, then one difference a label, then drift, then warm-up
 */
record DayFit(List<String> labels, DayTerms terms, GroupedFit fit) {
    DayFit {
        labels = List.copyOf(labels);
    }

    /** Level of the reference, with the mean drift and warm-up of the day. */
    double referenceLevel() {
        return fit.fit().coefficient(0);
    }

    /** Level of a label under the same conditions. */
    double level(String label) {
        return contrastValue(levelOf(label));
    }

    private double contrastValue(Series contrast) {
        return fit.fit().estimate(contrast).value();
    }

    /** Level of a label as weights of the coefficients. */
    Series levelOf(String label) {
        int place = labels.indexOf(label);
        return unit(index -> index == 0 || (place > 0 && index == place));
    }

    /** Difference of two labels as weights of the coefficients. */
    Series contrast(String label, String against) {
        int plus = labels.indexOf(label);
        int minus = labels.indexOf(against);
        return Series.generate(coefficients(), index -> {
            if (index == 0) {
                return 0;
            }
            return (index == plus ? 1 : 0) - (index == minus ? 1 : 0);
        });
    }

    /** Difference of two labels in percent of the reference. */
    Estimate differencePercent(String label, String against) {
        return fit.estimate(contrast(label, against)).rescaled(toPercent(), 0);
    }

    /** Change a pull in percent of the reference. */
    Optional<Estimate> driftPercent() {
        return terms.drift()
                ? Optional.of(
                        fit.estimate(unit(index -> index == labels.size())).rescaled(toPercent(), 0))
                : Optional.empty();
    }

    /** What the very first pull lacked or had too much, in percent of the reference. */
    Optional<Estimate> warmUpPercent() {
        return terms.warmUp()
                ? Optional.of(
                        fit.estimate(unit(index -> index == coefficients() - 1)).rescaled(toPercent(), 0))
                : Optional.empty();
    }

    /** Scatter of one pull of a label, one standard deviation in percent, with its degrees of freedom. */
    VariancePart scatter(String label) {
        return fit.scatters().get(labels.indexOf(label));
    }

    double toPercent() {
        return 100 / referenceLevel();
    }

    int coefficients() {
        return fit.fit().coefficients().size();
    }

    private Series unit(java.util.function.IntPredicate member) {
        return Series.generate(coefficients(), index -> member.test(index) ? 1 : 0);
    }
}
