package org.nextpull.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.nextpull.advice.HoldPlanner.HoldStep;
import org.nextpull.advice.HoldPlanner.Plateau;
import org.nextpull.advice.HoldPlanner.Reason;

class HoldPlannerTest {
    private static final double FREE = Double.POSITIVE_INFINITY;
    private final HoldPlanner planner = new HoldPlanner(new PlannerRules.Spark(0, 40, 4, 0.5, 2));

    private static List<Plateau> plateaus(double... degAndPercent) {
        List<Plateau> plateaus = new ArrayList<>();
        for (int i = 0; i < degAndPercent.length; i += 2) {
            plateaus.add(new Plateau(degAndPercent[i], degAndPercent[i + 1]));
        }
        return plateaus;
    }

    @Test
    void goesUpByTheStepWhileTorqueRises() {
        assertThat(planner.next(plateaus(18, 500), FREE, false)).isEqualTo(new HoldStep.Set(22));
        assertThat(planner.next(plateaus(18, 500, 22, 501), FREE, false)).isEqualTo(new HoldStep.Set(26));
    }

    @Test
    void goesBackIntoTheTwoGapsOnceItFalls() {
        assertThat(planner.next(plateaus(18, 500, 22, 501, 26, 500.8), FREE, false))
                .isEqualTo(new HoldStep.Set(24));
        assertThat(planner.next(plateaus(18, 500, 22, 501, 26, 500.8, 24, 501.2), FREE, false))
                .isEqualTo(new HoldStep.Set(20));
        assertThat(planner.next(plateaus(18, 500, 22, 501, 26, 500.8, 24, 501.2, 20, 500.7), FREE, false))
                .isEqualTo(new HoldStep.Done(Reason.TURNED));
    }

    @Test
    void goesNoFurtherThanItsLimit() {
        assertThat(planner.next(plateaus(18, 500), 20.3, false)).isEqualTo(new HoldStep.Set(20));
        assertThat(planner.next(plateaus(18, 500, 20, 501), 20.3, false)).isEqualTo(new HoldStep.Done(Reason.LIMITED));
        assertThat(planner.next(plateaus(38, 500), FREE, false)).isEqualTo(new HoldStep.Set(40));
    }

    @Test
    void goesBackNoFurtherThanThePlanGoesDown() {
        HoldPlanner narrow = new HoldPlanner(new PlannerRules.Spark(18, 40, 4, 0.5, 2));
        assertThat(narrow.next(plateaus(18, 500, 22, 499), FREE, false)).isEqualTo(new HoldStep.Set(20));
        assertThat(narrow.next(plateaus(18, 500, 22, 499, 20, 500.1), FREE, false))
                .isEqualTo(new HoldStep.Done(Reason.TURNED));
    }

    @Test
    void goesOnFromTheMostAdvancedPlateauWhereLessStoodThanWasAsked() {
        assertThat(planner.next(plateaus(18, 500, 12, 498), FREE, false))
                .as("less torque with less advance has not turned over")
                .isEqualTo(new HoldStep.Set(22));
        assertThat(planner.next(plateaus(18, 500, 12, 498, 22, 499.5), FREE, false))
                .isEqualTo(new HoldStep.Set(20));
    }

    @Test
    void endsAtOnceWhereKnockOrALimitWasMet() {
        assertThat(planner.next(plateaus(18, 500, 22, 501), FREE, true)).isEqualTo(new HoldStep.Done(Reason.ENDED));
    }
}
