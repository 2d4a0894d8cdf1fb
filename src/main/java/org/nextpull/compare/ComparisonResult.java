package org.nextpull.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.finding.Finding;
import org.nextpull.scatter.Repeatability;
import org.nextpull.scatter.Scatter;

/**
 * Labels against a reference.
 *
 * @param reference its label and level, in the unit of the pulls
 * @param worthPercent difference that matters to the operator
 * @param comparisons one a label, the highest first
 * @param ranking all labels, the reference among them, the highest first
 * @param groups labels between which no real difference was found, along the ranking; a label may be in two
 * @param scatters scatter of each label
 * @param drift slow change over the day; empty where the pulls were too few to fit one
 * @param warmUpPercent what the very first pull differed by, in percent; empty where the first pulls do not show it
 * @param curves mean curve of each label, the reference first; empty where rows are missing
 * @param further how to go on where it cannot be told yet; empty when all is settled or out of reach
 * @param isFinal whether the verdicts stand; not while planned pulls are still to come
 * @param findings what is wrong or worth saying
 */
public record ComparisonResult(
        Reference reference,
        double worthPercent,
        List<Comparison> comparisons,
        List<String> ranking,
        List<List<String>> groups,
        List<LabelScatter> scatters,
        Repeatability.Drift drift,
        Optional<Double> warmUpPercent,
        List<LevelCurve> curves,
        Optional<FurtherPulls> further,
        boolean isFinal,
        List<Finding> findings) {
    /** Confidence of the intervals, in percent. */
    public static final double INTERVAL_PERCENT = 95;

    /** The reference. */
    public record Reference(String label, double level) {}

    public ComparisonResult {
        comparisons = List.copyOf(comparisons);
        ranking = List.copyOf(ranking);
        groups = groups.stream().map(List::copyOf).toList();
        scatters = List.copyOf(scatters);
        curves = List.copyOf(curves);
        findings = List.copyOf(findings);
    }

    ComparisonResult with(Optional<FurtherPulls> newFurther, List<Finding> newFindings) {
        return new ComparisonResult(
                reference,
                worthPercent,
                comparisons,
                ranking,
                groups,
                scatters,
                drift,
                warmUpPercent,
                curves,
                newFurther,
                isFinal,
                newFindings);
    }

    /** The comparison of a label. */
    public Optional<Comparison> of(String label) {
        return comparisons.stream()
                .filter(comparison -> comparison.label().equals(label))
                .findFirst();
    }

    /**
     * Pull-to-pull scatter of one label, after drift.
     *
     * @param pulls how many pulls it has
     */
    public record LabelScatter(String label, int pulls, Scatter scatter) {}

    /**
     * The mean curve of a label over speed.
     *
     * @param label the label
     * @param rows ascending in speed
     */
    public record LevelCurve(String label, List<Row> rows) {
        public LevelCurve {
            rows = List.copyOf(rows);
        }

        /** The curve at one speed, in 1/min. */
        public record Row(double rpm, Level level) {}

        /**
         * A level in the unit of the pulls, as it would be in mid-day: drift and warm-up taken out.
         *
         * @param value the level
         * @param halfWidth half width of its simultaneous 95 % band, which holds at all speeds of this label together. Two bands that
         *     overlap do not show that labels are alike: the difference has a narrower interval of its own
         */
        public record Level(double value, double halfWidth) {
            /** Lower end of the band, in the unit of the pulls. */
            public double low() {
                return value - halfWidth;
            }

            /** Upper end of the band, in the unit of the pulls. */
            public double high() {
                return value + halfWidth;
            }
        }
    }

    /**
     * How to go on where it cannot be told yet.
     *
     * @param order labels of the further pulls, one by one
     * @param looks how the comparison must then be taken for its looks together to keep their error
     */
    public record FurtherPulls(List<String> order, InterimLooks looks) {
        public FurtherPulls {
            order = List.copyOf(order);
        }

        /** The further pulls of a result with so many pulls done; empty when all is settled or what is not is out of reach. */
        static Optional<FurtherPulls> of(ComparisonResult result, InterimLooks looks, int done) {
            List<String> labels = new ArrayList<>(List.of(result.reference().label()));
            int needed = 0;
            for (Comparison one : result.comparisons()) {
                if (one.pullsNeeded().isPresent()) {
                    labels.add(one.label());
                    needed = Math.max(needed, one.pullsNeeded().getAsInt());
                }
            }
            if (labels.size() == 1) {
                return Optional.empty();
            }
            int count = looks.isFinal(done) ? count(needed, labels.size()) : needed;
            return Optional.of(new FurtherPulls(PullOrder.thereAndBack(labels, count), looks.next(done, count)));
        }

        /** What is needed between two labels, for each of several: whole turns there and back. */
        private static int count(int needed, int labels) {
            return labels == 2 ? needed : 2 * labels * (int) Math.ceil(needed / 4.0);
        }
    }
}
