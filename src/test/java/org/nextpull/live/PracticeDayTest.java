package org.nextpull.live;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanText;

class PracticeDayTest {
    /** Only pulls that count take the chain through all that the first real pull needs. */
    @ParameterizedTest
    @ValueSource(strings = {"hillclimb-e10-timing", "hillclimb-e10-map", "hillclimb-fuels", "hatchback-roller-mixture"})
    void itsPullsAreFoundAndAdvisedOverUnderTheShippedPlans(String name) throws Exception {
        SweepPlan plan = PlanText.read(Files.readString(Path.of("sweep-plans", name + ".toml")), name)
                .value()
                .orElseThrow();
        assertThat(PracticeDay.run(HandDriven.setup(plan)))
                .hasSize(6)
                .allMatch(curve -> curve.pull().figures().isPresent());
        assertThat(Path.of("practice")).doesNotExist();
    }
}
