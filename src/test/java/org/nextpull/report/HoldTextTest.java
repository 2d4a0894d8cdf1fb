package org.nextpull.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.nextpull.advice.HoldNow;

class HoldTextTest {
    private static HoldNow now(HoldNow.Step step) {
        return new HoldNow(step, 2, 3, 5000, OptionalDouble.of(21), OptionalDouble.of(41.9), 5, Optional.empty());
    }

    @Test
    void theNextSpeedWaitsForTheCoolDown() {
        NextStep step =
                HoldText.step(now(HoldNow.Step.GO), OptionalDouble.of(42.2)).orElseThrow();
        assertThat(step.kind()).isEqualTo(NextStep.Kind.WAIT);
        assertThat(step.word()).isEqualTo("Wait 43 s");
        assertThat(step.about()).isEqualTo("then hold");
        assertThat(HoldText.afterCoolDown(now(HoldNow.Step.GO), 42.2))
                .isEqualTo("WAIT 43 s. Then hold 5000 rpm (2 of 3) at full load with 21.0 deg.");
    }

    @Test
    void nobodyCoolsDownWhileTheEngineIsHeld() {
        NextStep step =
                HoldText.step(now(HoldNow.Step.SET), OptionalDouble.of(42.2)).orElseThrow();
        assertThat(step.kind()).isEqualTo(NextStep.Kind.PULL);
        assertThat(step.about()).isEqualTo("41 s left at load");
        assertThat(HoldText.step(now(HoldNow.Step.PROVE), OptionalDouble.empty()))
                .isEmpty();
    }

    @Test
    void anotherAdvanceThanAskedIsSaidWithWhatWasAsked() {
        HoldNow set = new HoldNow(
                HoldNow.Step.SET,
                2,
                3,
                5000,
                OptionalDouble.of(26),
                OptionalDouble.of(37),
                2,
                Optional.of(new HoldNow.OtherAdvance(24, 22)));
        assertThat(HoldText.sentence(set))
                .isEqualTo("Set 26.0 deg at 5000 rpm. Asked 24.0, the log says 22.0 deg. 37 s left at load.");
        assertThat(HoldText.advance(set).change()).isEqualTo("log says 22.0; 37 s left at load");
    }
}
