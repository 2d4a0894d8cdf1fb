package org.nextpull.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.DoubleStream;
import org.nextpull.unit.Lambda;

/**
 * What knock forbids, by speed and mixture, and what clean pulls have shown, read off the pulls alone. Knock forbids the margin below
 * it at the speeds around it, at its mixture, richer and leaner; leaner it forbids more.
 */
final class Exclusions {
    /** Speeds this near to a knock are forbidden with it, rpm. */
    static final double AROUND_RPM = 250;
    /** Advance that is given up per hundredth of lambda leaner than what was run, beyond the first hundredth, degrees. */
    static final double DEG_PER_HUNDREDTH = 0.3;

    /** Leaner than what was run by so much gives up nothing. */
    static final double FREE_HUNDREDTHS = 1;

    private static final double HUNDREDTHS = 100;
    private static final double SAME_RPM = 1e-6;

    private final List<TriedPull> pulls;
    private final PlannerRules.Spark rules;
    private final double[] rows;
    private final List<Ban> bans = new ArrayList<>();

    /** One flag and what it forbids. */
    private record Ban(FlagLooks.Look look, double aroundRpm, double marginDeg) {
        TriedPull pull() {
            return look.pull();
        }

        boolean reaches(double speedRpm) {
            OptionalDouble rpm = look.flag().rpm();
            return rpm.isEmpty() || Math.abs(rpm.getAsDouble() - speedRpm) <= aroundRpm + SAME_RPM;
        }
    }

    /**
     * @param rows speeds of the answer; a knock always forbids at the nearest of them
     */
    Exclusions(List<TriedPull> pulls, PlannerRules.Spark rules, double[] rows, FlagLooks looks) {
        this.pulls = List.copyOf(pulls);
        this.rules = rules;
        this.rows = rows.clone();
        for (FlagLooks.Look look : looks.standing()) {
            bans.add(new Ban(look, around(look.flag()), look.marginDeg(rules.knockMarginDeg())));
        }
    }

    private double around(TriedPull.KnockFlag flag) {
        if (flag.rpm().isEmpty()) {
            return Double.POSITIVE_INFINITY;
        }
        double nearest = Double.POSITIVE_INFINITY;
        for (double row : rows) {
            nearest = Math.min(nearest, Math.abs(row - flag.rpm().getAsDouble()));
        }
        return Math.max(AROUND_RPM, nearest);
    }

    /** Most advance that knock leaves at a speed and mixture; infinite where none forbids. */
    double banDeg(double rpm, Optional<Lambda> lambda) {
        return banDeg(rpm, lambda, look -> true);
    }

    /** The same of some flags only. */
    double banDeg(double rpm, Optional<Lambda> lambda, Predicate<FlagLooks.Look> counts) {
        double ban = Double.POSITIVE_INFINITY;
        for (Ban one : bans) {
            if (one.reaches(rpm) && counts.test(one.look)) {
                ban = Math.min(ban, one.pull().spark().degAt(rpm) - one.marginDeg - givenUp(one.pull(), lambda));
            }
        }
        return ban;
    }

    /**
     * Most advanced clean advance at a speed, less what a leaner mixture gives up; an exhaust that was too hot and that more advance
     * cools counts as clean toward it. Where every pull knocked there, so far below the
     * least of them that a step from it keeps the margin; where no pull got there, so far below what stood there that a step from it
     * goes no further. Between two held speeds what stood there counts as clean, as far as a step from it stays within what both ran clean.
     */
    double mostAdvancedClean(double rpm, Optional<Lambda> lambda) {
        double clean = Double.NEGATIVE_INFINITY;
        double least = Double.POSITIVE_INFINITY;
        double stood = Double.POSITIVE_INFINITY;
        for (TriedPull pull : pulls) {
            double there = pull.spark().degAt(rpm) - givenUp(pull, lambda);
            stood = Math.min(stood, there);
            if (!pull.reached().contains(rpm)) {
                continue;
            }
            least = Math.min(least, there);
            if (isCleanAt(pull, rpm) || (pull.isCooledByAdvance() && !rangAt(pull, rpm))) {
                clean = Math.max(clean, there);
            }
        }
        if (clean > Double.NEGATIVE_INFINITY) {
            return clean;
        }
        double step = rules.largestStepDeg();
        if (least < Double.POSITIVE_INFINITY) {
            return least - step - rules.knockMarginDeg();
        }
        return Math.max(stood - step, Math.min(stood, betweenHeld(rpm, lambda) - step));
    }

    /** Most advance that was run clean at both of the held speeds next to a speed; minus infinity where it does not lie between two. */
    private double betweenHeld(double rpm, Optional<Lambda> lambda) {
        OptionalDouble below = held().filter(speed -> speed < rpm).max();
        OptionalDouble above = held().filter(speed -> speed > rpm).min();
        return below.isEmpty() || above.isEmpty()
                ? Double.NEGATIVE_INFINITY
                : Math.min(heldClean(below.getAsDouble(), lambda), heldClean(above.getAsDouble(), lambda));
    }

    private DoubleStream held() {
        return pulls.stream().flatMapToDouble(pull -> pull.heldRpm().stream());
    }

    private double heldClean(double rpm, Optional<Lambda> lambda) {
        return Math.min(mostAdvancedClean(rpm, lambda), banDeg(rpm, lambda));
    }

    /** What clean pulls ran at a speed, whatever their mixture, degrees in order; empty where none got there. */
    double[] cleanDeg(double rpm) {
        return pulls.stream()
                .filter(pull -> pull.reached().contains(rpm) && isCleanAt(pull, rpm))
                .mapToDouble(pull -> pull.spark().degAt(rpm))
                .sorted()
                .toArray();
    }

    private boolean isCleanAt(TriedPull pull, double rpm) {
        return !pull.metLimit() && !rangAt(pull, rpm);
    }

    private boolean rangAt(TriedPull pull, double rpm) {
        return bans.stream().anyMatch(ban -> ban.pull().equals(pull) && ban.reaches(rpm));
    }

    private static double givenUp(TriedPull pull, Optional<Lambda> lambda) {
        if (lambda.isEmpty() || pull.lambda().isEmpty()) {
            return 0;
        }
        double leaner = (lambda.get().value() - pull.lambda().get().value()) * HUNDREDTHS;
        return DEG_PER_HUNDREDTH * Math.max(0, leaner - FREE_HUNDREDTHS);
    }
}
