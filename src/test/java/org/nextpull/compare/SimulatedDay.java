package org.nextpull.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.IntToDoubleFunction;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import org.nextpull.fit.SurfaceKnowledge;
import org.nextpull.math.Estimate;
import org.nextpull.scatter.Scatter;

/**
 * Invented days with a known truth: two labels A and B around 200 N.m.
 *
 * @param order labels in pulling order, one letter a pull
 * @param differencePercent true difference of B from A
 * @param scatterPercent scatter of a pull of A
 * @param scatterRatio scatter of B over that of A
 * @param slow slow change of the day
 * @param outliers part of the pulls that scatter five times as wide
 * @param scatterSpread days scatter from one to this part of {@code scatterPercent} to this many times it, even in the logarithm; 1 for
 *     all alike
 * @param toldWithin standard deviation of the logarithm within which sweeps tell the scatter of each label before; 0 where none ran
 */
record SimulatedDay(
        String order,
        double differencePercent,
        double scatterPercent,
        double scatterRatio,
        Slow slow,
        double outliers,
        double scatterSpread,
        double toldWithin) {
    /** Of the logarithm: root mean square over 60 days of the planner's bench. */
    static final double SWEEPS_TELL_WITHIN = 0.32;

    /** What changes over the day apart from the labels, in percent, pull by pull. */
    @FunctionalInterface
    interface Slow {
        Slow NONE = (pulls, random) -> new double[pulls];

        double[] percents(int pulls, RandomGenerator random);

        /** So much over ten pulls. */
        static Slow straight(double percentPerTen) {
            return (pulls, random) -> each(pulls, place -> percentPerTen * place / 10);
        }

        /** A parabola that leaves the straight line between first and last pull by so much in mid-day. */
        static Slow bow(double percent) {
            return (pulls, random) -> each(pulls, place -> {
                double part = place / (pulls - 1.0);
                return 4 * percent * part * (1 - part);
            });
        }

        /** The same times a number between -1 and 1 that each day draws. */
        default Slow ofAnySize() {
            return (pulls, random) -> {
                double size = 2 * random.nextDouble() - 1;
                double[] percents = percents(pulls, random);
                return each(pulls, place -> size * percents[place]);
            };
        }

        /** Half a wave about the mean, from so much above to so much below. */
        static Slow halfWave(double percent) {
            return (pulls, random) -> each(pulls, place -> percent * Math.cos(Math.PI * place / (pulls - 1.0)));
        }

        /** Settles by so much, by 63 % of it in so many pulls. */
        static Slow settling(double percent, double settlePulls) {
            return (pulls, random) -> each(pulls, place -> percent * (1 - Math.exp(-place / settlePulls)));
        }

        /** Goes up or down from pull to pull by chance, with this standard deviation. */
        static Slow walk(double percent) {
            return (pulls, random) -> {
                double[] percents = new double[pulls];
                for (int place = 1; place < pulls; place++) {
                    percents[place] = percents[place - 1] + percent * random.nextGaussian();
                }
                return percents;
            };
        }

        /** Leaps by so much before the pull in mid-day. */
        static Slow step(double percent) {
            return (pulls, random) -> each(pulls, place -> place < pulls / 2 ? 0 : percent);
        }

        default Slow and(Slow other) {
            return (pulls, random) -> {
                double[] one = percents(pulls, random);
                double[] two = other.percents(pulls, random);
                return each(pulls, place -> one[place] + two[place]);
            };
        }

        private static double[] each(int pulls, IntToDoubleFunction percent) {
            return IntStream.range(0, pulls).mapToDouble(percent).toArray();
        }
    }

    static SimulatedDay of(String order, double differencePercent, Slow slow) {
        return new SimulatedDay(order, differencePercent, 0.3, 1, slow, 0, 1, 0);
    }

    SimulatedDay withDifference(double percent) {
        return new SimulatedDay(
                order, percent, scatterPercent, scatterRatio, slow, outliers, scatterSpread, toldWithin);
    }

    SimulatedDay withScatter(double percent) {
        return new SimulatedDay(
                order, differencePercent, percent, scatterRatio, slow, outliers, scatterSpread, toldWithin);
    }

    SimulatedDay withScatterRatio(double ratio) {
        return new SimulatedDay(
                order, differencePercent, scatterPercent, ratio, slow, outliers, scatterSpread, toldWithin);
    }

    SimulatedDay withOutliers(double part) {
        return new SimulatedDay(
                order, differencePercent, scatterPercent, scatterRatio, slow, part, scatterSpread, toldWithin);
    }

    SimulatedDay withScatterSpread(double times) {
        return new SimulatedDay(
                order, differencePercent, scatterPercent, scatterRatio, slow, outliers, times, toldWithin);
    }

    /** After a sweep of each label, which tells its scatter. */
    SimulatedDay afterSweeps() {
        return new SimulatedDay(
                order,
                differencePercent,
                scatterPercent,
                scatterRatio,
                slow,
                outliers,
                scatterSpread,
                SWEEPS_TELL_WITHIN);
    }

    List<ComparedPull> pulls(RandomGenerator random) {
        return pulls(random, scatterOfDay(random));
    }

    private double scatterOfDay(RandomGenerator random) {
        return scatterPercent * Math.pow(scatterSpread, 2 * random.nextDouble() - 1);
    }

    private List<ComparedPull> pulls(RandomGenerator random, double dayScatter) {
        List<ComparedPull> pulls = new ArrayList<>();
        double[] percents = slow.percents(order.length(), random);
        for (int place = 0; place < order.length(); place++) {
            String label = order.substring(place, place + 1);
            boolean isB = label.equals("B");
            double scatter = dayScatter * (isB ? scatterRatio : 1);
            if (random.nextDouble() < outliers) {
                scatter *= 5;
            }
            double percent = 100 + (isB ? differencePercent : 0) + percents[place] + scatter * random.nextGaussian();
            pulls.add(new ComparedPull(place + 1, place, label, 2 * percent, List.of()));
        }
        return pulls;
    }

    /** Verdicts of many days, in percent of them. */
    Rates run(int days, double worth, InterimLooks looks, long seed) {
        RandomGenerator random = new SplittableRandom(seed);
        int claims = 0;
        int same = 0;
        double half = 0;
        for (int day = 0; day < days; day++) {
            double dayScatter = scatterOfDay(random);
            List<ComparedPull> pulls = pulls(random, dayScatter);
            Estimate difference = new DayModel(List.of("A", "B"), told(random, dayScatter))
                    .fit(pulls)
                    .differencePercent("B", "A");
            claims += isClaimed(pulls, difference, looks) ? 1 : 0;
            same += Math.abs(difference.value()) + difference.halfWidth(1 - looks.sameError()) <= worth ? 1 : 0;
            half += difference.halfWidth(0.95) / days;
        }
        return new Rates(100.0 * claims / days, 100.0 * same / days, half);
    }

    private Map<String, Scatter> told(RandomGenerator random, double dayScatter) {
        return toldWithin > 0
                ? Map.of(
                        "A",
                        told(random.nextGaussian(), dayScatter),
                        "B",
                        told(random.nextGaussian(), dayScatter * scatterRatio))
                : Map.of();
    }

    private Scatter told(double normal, double scatter) {
        return new Scatter(scatter * Math.exp(toldWithin * normal), SurfaceKnowledge.SWEEP_FREEDOM);
    }

    /** Difference of B from A in percent, without what a whole comparison works out beside it. */
    static Estimate difference(List<ComparedPull> pulls) {
        return new DayModel(List.of("A", "B"), Map.of()).fit(pulls).differencePercent("B", "A");
    }

    /** Whether a difference is claimed at this look, whatever the worth: a small claim is a claim. */
    static boolean isClaimed(List<ComparedPull> pulls, Estimate difference, InterimLooks looks) {
        return PullOrder.suffice(pulls.stream().map(ComparedPull::label).toList(), "A", "B")
                && Math.abs(difference.value()) > difference.halfWidth(1 - looks.claimError(pulls.size()));
    }

    /** Days on which a difference was claimed, whatever the worth; days with "same"; mean half width of the interval. */
    record Rates(double claims, double same, double halfWidth) {}
}
