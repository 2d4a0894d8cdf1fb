package org.nextpull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Planning a day of comparing from the command line. All data here is invented. */
class PlanPullsCommandTest {
    @TempDir
    private Path folder;

    @Test
    void theOrderIsThereAndBackAndBlocksCostMore() {
        Run run = Run.of("plan-pulls --scatter 0.3 --difference 1 --labels before,after --json");
        assertThat(run.status()).as(run.err()).isZero();
        JsonNode json = run.json();
        assertThat(json.at("/interleaved/order/0").asText()).isEqualTo("before");
        assertThat(json.at("/interleaved/order/1").asText()).isEqualTo("after");
        assertThat(json.at("/interleaved/order/2").asText()).isEqualTo("after");
        assertThat(json.at("/interleaved/pulls").asInt())
                .isEqualTo(json.at("/interleaved/order").size())
                .isLessThan(json.at("/two_change_overs/pulls").asInt());
        assertThat(json.at("/three_change_overs/pulls").asInt())
                .isLessThan(json.at("/two_change_overs/pulls").asInt());
        assertThat(json.at("/interleaved/power_unplanned").asDouble())
                .isLessThan(json.at("/interleaved/power").asDouble());
        assertThat(json.at("/interleaved/power").asDouble()).isGreaterThanOrEqualTo(0.8);
        assertThat(Run.of("plan-pulls --scatter 0.3 --difference 1").out()).contains("A-B-B-A", "A B B A");
    }

    /** Three fuels that are changed dearly: blocks, and a flushing pull after each change-over that is counted and thrown away. */
    @Test
    void dearChangeOversMakeBlocks() {
        JsonNode three = Run.of("plan-pulls --scatter 0.3 --difference 1 --labels 3 --changes 3 --json")
                .json()
                .at("/least_cost");
        assertThat(three.at("/change_overs").asInt())
                .isEqualTo(5)
                .isEqualTo(three.at("/flushing_pulls").asInt());
        assertThat(three.at("/order").size()).isEqualTo(three.at("/pulls").asInt());
        assertThat(three.at("/cost_pulls").asDouble())
                .isEqualTo(three.at("/pulls").asDouble()
                        + three.at("/flushing_pulls").asDouble());
        JsonNode dear = Run.of("plan-pulls --scatter 0.3 --difference 1 --labels e10,e85,race --change-cost 6 --json")
                .json()
                .at("/least_cost");
        assertThat(dear.at("/cost_pulls").asDouble())
                .isEqualTo(dear.at("/pulls").asDouble()
                        + 7 * dear.at("/change_overs").asDouble());
        assertThat(dear.at("/power").asDouble()).isGreaterThanOrEqualTo(0.8);
        assertThat(Run.of("plan-pulls --scatter 0.3 --difference 1 --labels e10,e85,race --change-cost 6")
                        .out())
                .contains("flushes the old fuel out and is discarded", "at the cost of", "for all labels together");
        assertThat(Run.of("plan-pulls --scatter 0.3 --difference 0.02 --labels 3 --change-cost 6")
                        .out())
                .contains("out of reach");
    }

    /** What the sweeps of a day of candidates tell of the scatter counts in its verdict, so fewer decision runs do. */
    @Test
    void sweepsBeforeSaveRuns() {
        String wish = "plan-pulls --scatter 0.3 --difference 1 --labels 3 --changes 3";
        JsonNode alone = Run.of(wish + " --json").json();
        JsonNode swept = Run.of(wish + " --swept --json").json();
        assertThat(swept.at("/least_cost/pulls").asInt())
                .isLessThan(alone.at("/least_cost/pulls").asInt());
        assertThat(swept.at("/least_cost/power").asDouble()).isGreaterThanOrEqualTo(0.8);
        assertThat(swept.at("/swept").asBoolean()).isTrue();
        assertThat(alone.at("/swept").asBoolean()).isFalse();
        assertThat(Run.of(wish + " --swept").out()).contains("repeatability of 0.3 %, after a sweep of each with 3");
    }

    @Test
    void aWishBeyondADayIsOutOfReach() {
        Run run = Run.of("plan-pulls --scatter 0.5 --difference 0.1");
        assertThat(run.status()).isZero();
        assertThat(run.out()).contains("out of reach");
        JsonNode json =
                Run.of("plan-pulls --scatter 0.5 --difference 0.1 --json").json();
        assertThat(json.at("/interleaved").isNull()).isTrue();
        assertThat(json.at("/three_change_overs").isNull()).isTrue();
        assertThat(json.at("/resolved_by_most_percent").asDouble()).isGreaterThan(0.1);
    }

    /** By hand, deviations of the two settings: (0.45 and 0.25) N.m, some 0.2 % of 200. */
    @Test
    void theScatterMayComeFromTheRepeatsOfATable() throws IOException {
        Path plan = Files.writeString(
                folder.resolve("plan.toml"), "[timing]\nstart_deg = 20\nleast_deg = 14\nmost_deg = 36\n");
        Path day = Files.writeString(
                folder.resolve("day.csv"),
                "order,advance_deg,torque_nm\n1,20,200.0\n2,24,204\n3,20,200.5\n4,24,204.3\n5,20,199.6\n6,24,203.8\n");
        Run run = Run.of(
                "plan-pulls",
                "--scatter-from",
                day.toString(),
                "--plan",
                plan.toString(),
                "--difference",
                "1",
                "--json");
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(run.json().at("/scatter_percent").asDouble()).isCloseTo(0.2, within(0.12));
        assertThat(run.json().at("/scatter_df").asDouble()).isBetween(1.0, 4.0);
        Path slope =
                Files.writeString(folder.resolve("slope.csv"), "order,advance_deg,torque_nm\n1,20,200\n2,24,204\n");
        Run none = Run.of(
                "plan-pulls", "--scatter-from", slope.toString(), "--plan", plan.toString(), "--difference", "1");
        assertThat(none.status()).isEqualTo(1);
        assertThat(none.err()).contains("no repeats");
    }

    @Test
    void nonsenseIsWrongUsage() {
        assertThat(Run.of("plan-pulls --difference 1").status()).isEqualTo(2);
        assertThat(Run.of("plan-pulls --scatter 0 --difference 1").status()).isEqualTo(2);
        assertThat(Run.of("plan-pulls --scatter 0.3 --difference -1").status()).isEqualTo(2);
        assertThat(Run.of("plan-pulls --scatter 0.3 --difference 1 --power 20").status())
                .isEqualTo(2);
        assertThat(Run.of("plan-pulls --scatter 0.3 --difference 1 --labels A,A")
                        .status())
                .isEqualTo(2);
        for (String nonsense : List.of("--labels 1", "--labels 99", "--changes 1", "--changes x", "--change-cost -1")) {
            assertThat(Run.of("plan-pulls --scatter 0.3 --difference 1 " + nonsense)
                            .status())
                    .as(nonsense)
                    .isEqualTo(2);
        }
        assertThat(Run.of("plan-pulls --scatter 0.3 --scatter-from x.csv --plan p.toml --difference 1")
                        .status())
                .isEqualTo(2);
    }
}
