package org.nextpull.compare;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.nextpull.compare.SimulatedDay.Rates;
import org.nextpull.compare.SimulatedDay.Slow;

/**
 * False claims and findings of the comparison on invented days where its model is right and where it is wrong: the table of the
 * handbook page on comparing. Run {@link #main} with the number of days a seed.
 */
final class CompareBench {
    private static final int SEEDS = 5;
    private static final InterimLooks PLANNED = new InterimLooks.Planned(4);

    private CompareBench() {}

    /** A kind of day, four pulls each and scatter 0.3 % unless it says otherwise. */
    @SuppressWarnings("ImmutableEnumChecker") // a simulated day is a record that nobody changes
    enum Case {
        STEADY("A B B A A B B A, no drift", SimulatedDay.of("ABBAABBA", 0, Slow.NONE)),
        LINE("A B B A A B B A, straight, 1 % in ten pulls", SimulatedDay.of("ABBAABBA", 0, Slow.straight(-1))),
        LINE_IN_TURN("A B A B A B A B, straight, 1 % in ten pulls", SimulatedDay.of("ABABABAB", 0, Slow.straight(-1))),
        BLOCK_BOW("A B B A, bowed by 1 %", SimulatedDay.of("ABBA", 0, Slow.bow(1))),
        TURNS_BOW("A B B A A B B A, bowed by 1 %", SimulatedDay.of("ABBAABBA", 0, Slow.bow(1))),
        SETTLING("A B B A A B B A, settling by 1 %", SimulatedDay.of("ABBAABBA", 0, Slow.settling(1, 5))),
        WALK("A B B A A B B A, wandering by 0.10 % a pull", SimulatedDay.of("ABBAABBA", 0, Slow.walk(0.1))),
        COLD(
                "A B B A A B B A A B B A, first pull 2 % low, dying out",
                SimulatedDay.of("ABBAABBAABBA", 0, Slow.straight(-0.3).and(Slow.settling(2, 3)))),
        TWO_BOW("A A B B B B A A, bowed by 1 %", SimulatedDay.of("AABBBBAA", 0, Slow.bow(1))),
        THREE_BOW("A B B B A A A B, bowed by 1 %", SimulatedDay.of("ABBBAAAB", 0, Slow.bow(1))),
        THREE_WALK("A B B B A A A B, wandering by 0.10 % a pull", SimulatedDay.of("ABBBAAAB", 0, Slow.walk(0.1))),
        ONE_STEP("A A A A B B B B, a step of 0.6 % in mid-day", SimulatedDay.of("AAAABBBB", 0, Slow.step(0.6))),
        REFERENCE_UNSTEADY(
                "A B B A A B B A, A scatters 1.5 %, B 0.3 %",
                SimulatedDay.of("ABBAABBA", 0, Slow.NONE).withScatter(1.5).withScatterRatio(0.2)),
        LABEL_UNSTEADY(
                "A B B A A B B A, A scatters 0.3 %, B 1.5 %",
                SimulatedDay.of("ABBAABBA", 0, Slow.NONE).withScatterRatio(5)),
        QUIET(
                "A B B A A B B A, scatter 0.15 %",
                SimulatedDay.of("ABBAABBA", 0, Slow.NONE).withScatter(0.15)),
        ROUGH(
                "A B B A A B B A, scatter 1 %",
                SimulatedDay.of("ABBAABBA", 0, Slow.NONE).withScatter(1)),
        OUTLIERS(
                "A B B A A B B A, one pull in twenty scatters five times as far",
                SimulatedDay.of("ABBAABBA", 0, Slow.NONE).withOutliers(0.05));

        private final String title;
        private final SimulatedDay day;

        Case(String title, SimulatedDay day) {
            this.title = title;
            this.day = day;
        }

        SimulatedDay day(double differencePercent) {
            return day.withDifference(differencePercent);
        }
    }

    /** How the days of a cell of blocks drift: each day draws its own size. */
    @SuppressWarnings("ImmutableEnumChecker") // a function without a state
    enum Drifting {
        STRAIGHT("straight, to 0.05 % a pull", Slow.straight(0.5).ofAnySize()),
        BOWED("bowed, to 1 %", Slow.bow(1).ofAnySize()),
        SLOW_WALK("wandering by 0.05 % a pull", Slow.walk(0.05)),
        FAST_WALK("wandering by 0.10 % a pull", Slow.walk(0.1));

        private final String title;
        private final Slow slow;

        Drifting(String title, Slow slow) {
            this.title = title;
            this.slow = slow;
        }

        /** Days in blocks, scatter 0.15 to 0.6 % from day to day, one pull in twenty five times as far off. */
        SimulatedDay day(int changeOvers, int runsEach, double differencePercent) {
            int ends = (int) Math.round((changeOvers == 2 ? 0.5 : 0.3) * runsEach);
            String order = changeOvers == 2
                    ? "A".repeat(ends) + "B".repeat(runsEach) + "A".repeat(runsEach - ends)
                    : "A".repeat(ends) + "B".repeat(runsEach - ends) + "A".repeat(runsEach - ends) + "B".repeat(ends);
            return SimulatedDay.of(order, differencePercent, slow)
                    .withScatterSpread(2)
                    .withOutliers(0.05);
        }
    }

    private static void blocks(int days, PrintStream out) {
        out.println(
                "| drift | change-overs | runs each | sweeps before | interval holds, % | half width, % | finds 1 %, % | finds 0.5 %, % |");
        out.println("|---|---|---|---|---|---|---|---|");
        for (Drifting drifting : Drifting.values()) {
            for (int changes = 2; changes <= 3; changes++) {
                for (int runs : new int[] {4, 6, 8, 12}) {
                    row(drifting, changes, runs, false, days, out);
                    if (changes == 3) {
                        row(drifting, changes, runs, true, days, out);
                    }
                }
            }
        }
    }

    private static void row(Drifting drifting, int changes, int runs, boolean swept, int days, PrintStream out) {
        Rates none = rates(drifting.day(changes, runs, 0), swept, days, 21);
        out.printf(
                Locale.ROOT,
                "| %s | %d | %d | %s | %.1f | %.2f | %.0f | %.0f |%n",
                drifting.title,
                changes,
                runs,
                swept ? "yes" : "no",
                100 - none.claims(),
                none.halfWidth(),
                rates(drifting.day(changes, runs, 1), swept, days, 22).claims(),
                rates(drifting.day(changes, runs, 0.5), swept, days, 23).claims());
    }

    private static Rates rates(SimulatedDay day, boolean swept, int days, long seed) {
        return (swept ? day.afterSweeps() : day).run(days, 1, PLANNED, seed);
    }

    public static void main(String[] args) {
        int days = Integer.parseInt(args[0]);
        PrintStream out = new PrintStream(System.out, true);
        blocks(days, out);
        out.println(
                "| day | claims where nothing differs, % (least and most of five seeds) | finds 1 %, % | half width, % |");
        out.println("|---|---|---|---|");
        for (Case each : Case.values()) {
            List<Double> claims = new ArrayList<>();
            for (int seed = 1; seed <= SEEDS; seed++) {
                claims.add(each.day(0).run(days, 1, PLANNED, seed).claims());
            }
            Rates found = each.day(1).run(days, 1, PLANNED, 11);
            out.printf(
                    Locale.ROOT,
                    "| %s | %.1f (%.1f to %.1f) | %.0f | %.2f |%n",
                    each.title,
                    claims.stream().mapToDouble(Double::doubleValue).average().orElseThrow(),
                    claims.stream().mapToDouble(Double::doubleValue).min().orElseThrow(),
                    claims.stream().mapToDouble(Double::doubleValue).max().orElseThrow(),
                    found.claims(),
                    found.halfWidth());
        }
    }
}
