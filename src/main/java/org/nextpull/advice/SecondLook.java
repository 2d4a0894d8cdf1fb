package org.nextpull.advice;

import java.util.Optional;
import org.nextpull.channel.SparkMap;

/** Whether a lone knock flag holds back so much that its speed is worth looking at again, and the map that does. */
final class SecondLook {
    private static final double WORTH_PERCENT = 0.02;
    private static final double HELD_BACK_DEG = 0.75;
    private static final double ABOVE_DEG = 1;
    private static final double REACHED_DEG = 0.25;

    private final PlannerView.Day day;
    private final FlagLooks looks;
    private final PlannerView view;
    private final PlannerRules.Spark rules;

    SecondLook(PlannerView.Day day, FlagLooks looks, PlannerView view, PlannerRules.Spark rules) {
        this.day = day;
        this.looks = looks;
        this.view = view;
        this.rules = rules;
    }

    Optional<SparkMap> next() {
        Optional<FlagLooks.Look> costliest = Optional.empty();
        double most = WORTH_PERCENT;
        for (FlagLooks.Look look : looks.standing()) {
            if (look.isOpen() && heldBackPercent(look) > most) {
                most = heldBackPercent(look);
                costliest = Optional.of(look);
            }
        }
        return costliest.flatMap(this::map);
    }

    private static boolean isAround(FlagLooks.Look look, double rpm) {
        return Math.abs(look.flag().rpm().orElseThrow() - rpm) <= Exclusions.AROUND_RPM;
    }

    private double heldBackPercent(FlagLooks.Look look) {
        double sum = 0;
        for (int r = 0; r < view.rows.length; r++) {
            if (isAround(look, view.rows[r])) {
                double ban = look.pull().spark().degAt(view.rows[r]) - look.marginDeg(rules.knockMarginDeg());
                double held = view.best[r] - ban;
                sum += held > HELD_BACK_DEG ? held * held : 0;
            }
        }
        return day.posterior().curvaturePercent() * sum / view.rows.length;
    }

    /** The map that looks at a flag, where the cells can reach it and no other flag forbids it. */
    private Optional<SparkMap> map(FlagLooks.Look look) {
        double[] wanted = view.best.clone();
        for (int r = 0; r < wanted.length; r++) {
            wanted[r] += ABOVE_DEG;
        }
        SparkMap map = view.made(wanted, rpm -> isAround(look, rpm) ? lookLimit(look, rpm) : view.limit.deg(rpm));
        double rpm = look.flag().rpm().orElseThrow();
        return map.degAt(rpm) >= look.lookDeg() - REACHED_DEG ? Optional.of(map) : Optional.empty();
    }

    private double lookLimit(FlagLooks.Look look, double rpm) {
        double others = day.exclusions().banDeg(rpm, Optional.empty(), other -> other != look);
        double step = view.limit.mostAdvancedClean(rpm) + rules.largestStepDeg();
        return Math.min(Math.min(rules.mostDeg(), look.lookDeg()), Math.min(others, step));
    }
}
