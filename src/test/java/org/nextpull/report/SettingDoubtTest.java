package org.nextpull.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.nextpull.channel.EngineSetting;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanText;
import org.nextpull.session.Session;
import org.nextpull.session.SessionInput;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

class SettingDoubtTest {
    private static final SweepPlan PLAN =
            PlanText.read("""
                    [timing]
                    start_deg = 20
                    least_deg = 10
                    most_deg = 30
                    largest_step_deg = 2
                    [mixture]
                    start_lambda = 0.85
                    richest_lambda = 0.80
                    leanest_lambda = 0.95
                    """, "test.toml").value().orElseThrow();

    private static final SettingDoubt BEFORE_ANY_PULL =
            new SettingDoubt(PLAN, Session.evaluate(SessionInput.of(PLAN, List.of(), List.of())));

    private static EngineSetting set(double deg, double lambda) {
        return EngineSetting.ofNumbers(
                Optional.of(Advance.ofDeg(deg)), Optional.empty(), Optional.of(Lambda.of(lambda)));
    }

    @Test
    void whatThePlanAllowsIsNotDoubted() {
        assertThat(BEFORE_ANY_PULL.of(set(20, 0.85))).isEmpty();
        assertThat(BEFORE_ANY_PULL.of(set(30, 0.80))).isEmpty();
    }

    @Test
    void whatLiesOutsideOfThePlanIsSaidWithWhatItAllows() {
        assertThat(BEFORE_ANY_PULL.of(set(40, 0.79)).orElse(""))
                .contains("40.0 deg is outside the plan (10.0 deg to 30.0 deg)")
                .contains("lambda 0.790 is outside");
    }
}
