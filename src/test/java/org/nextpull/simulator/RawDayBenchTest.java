package org.nextpull.simulator;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A small run of {@link RawDayBench}, with bands as wide as its size asks for. */
class RawDayBenchTest {
    private static final int DAYS = 3;
    private static final long SEED = 11;

    @Test
    void aMapIsFoundInFewerPullsThanAGoodTunerTakes() {
        List<RawDay> led = RawDayBench.days(DAYS, SEED, seed -> RawDay.led(RawDayBench.spark(), seed));
        List<RawDay> tuned = RawDayBench.days(DAYS, SEED, seed -> RawDay.byAGoodTuner(RawDayBench.spark(), seed));
        assertThat(led).allMatch(RawDay::answered);
        assertThat(RawDayBench.mean(led, RawDay::pulls))
                .isBetween(3.0, 8.0)
                .isLessThan(RawDayBench.mean(tuned, RawDay::pulls));
        assertThat(RawDayBench.quantile(led, 1, RawDay::leftAtPeakPercent)).isLessThan(0.4);
        assertThat(RawDayBench.held(led)).isGreaterThan(0.75);
    }

    /** What the planner takes back where it knocked is no advance that the ignition took out. */
    @Test
    void anEngineThatKnocksAtSomeSpeedsStillGetsItsMap() {
        List<RawDay> led = RawDayBench.days(2, 1, seed -> RawDay.led(RawDayBench.knocking(), seed));
        assertThat(led).allMatch(RawDay::answered).allMatch(day -> day.knocking() >= 1 && day.knocking() <= 4);
        assertThat(RawDayBench.quantile(led, 1, RawDay::leftPercent)).isLessThan(1.2);
    }
}
