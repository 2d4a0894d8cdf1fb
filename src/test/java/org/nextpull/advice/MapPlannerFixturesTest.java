package org.nextpull.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.nextpull.channel.SparkMap;
import org.nextpull.fit.MapFixture;
import org.nextpull.fit.SpeedRows;
import org.nextpull.fit.SurfacePosterior;
import org.nextpull.unit.SpeedBand;

/** The next map, bans and limits against the decisions of {@link MapFixture}, which were computed by a program of their own. */
class MapPlannerFixturesTest {
    private static final double DEGREES = 0.02;
    /** The fixtures that were made to go on though they would have stopped. */
    private static final List<String> GOES_ON =
            List.of("shaped-tables-missing-rows", "slipped-pull", "knock-in-some-rows");

    static Stream<MapFixture> fixtures() throws IOException {
        return MapFixture.all();
    }

    private static PlannerRules.Spark spark(MapFixture fixture) {
        return new PlannerRules.Spark(
                0,
                fixture.number("plan_limit_deg"),
                fixture.number("largest_step_deg"),
                fixture.number("resolution_deg"),
                fixture.number("knock_margin_deg"));
    }

    private static List<TriedPull> pulls(MapFixture fixture) {
        double[] rows = fixture.rows().rpm();
        List<TriedPull> pulls = new ArrayList<>();
        for (int i = 0; i < fixture.json().get("pulls").size(); i++) {
            List<TriedPull.KnockFlag> flags = new ArrayList<>();
            for (JsonNode row : fixture.json().get("pulls").get(i).get("knock_rows")) {
                flags.add(TriedPull.KnockFlag.atRpm(rows[row.intValue()]));
            }
            pulls.add(new TriedPull(
                    SparkMap.of(rows, fixture.advance(i)),
                    Optional.empty(),
                    new SpeedBand(rows[0] - 200, rows[rows.length - 1] + 200),
                    flags,
                    false));
        }
        return pulls;
    }

    @ParameterizedTest
    @MethodSource("fixtures")
    void bansAndLimitsAreThoseOfTheFixture(MapFixture fixture) {
        double[] rows = fixture.rows().rpm();
        List<TriedPull> pulls = pulls(fixture);
        Exclusions exclusions = new Exclusions(pulls, spark(fixture), rows, new FlagLooks(pulls, false));
        StepLimit limit = new StepLimit(exclusions, spark(fixture), rpm -> Double.POSITIVE_INFINITY, Optional.empty());
        for (int r = 0; r < rows.length; r++) {
            JsonNode ban = fixture.json().get("ban_deg").get(r);
            assertThat(exclusions.banDeg(rows[r], Optional.empty()))
                    .isEqualTo(ban.isNull() ? Double.POSITIVE_INFINITY : ban.doubleValue());
            assertThat(limit.mostAdvancedClean(rows[r]))
                    .isCloseTo(fixture.numbers("most_advanced_clean_deg")[r], within(DEGREES));
            assertThat(limit.deg(rows[r])).isCloseTo(fixture.numbers("row_limit_deg")[r], within(DEGREES));
        }
    }

    @ParameterizedTest
    @MethodSource("fixtures")
    void theNextMapOrTheOneToLeaveIsThatOfTheFixture(MapFixture fixture) {
        boolean goesOn = GOES_ON.contains(fixture.toString());
        PlannerRules rules = new PlannerRules(
                spark(fixture),
                Optional.empty(),
                new PlannerRules.Ending(goesOn ? 0.01 : 0.10, 0.01, 0, goesOn ? -1 : 0.02, 3, 16),
                false);
        double[] cells = fixture.numbers("cells_rpm");
        DayEvidence evidence = new DayEvidence(
                SurfacePosterior.of(fixture.surface()),
                pulls(fixture),
                Optional.empty(),
                SparkMap.of(cells, new double[cells.length]));
        PlannerDecision decision = new DayPlanner(rules).decide(evidence);
        boolean stops = fixture.json().get("action").textValue().startsWith("stop");
        assertThat(decision).isInstanceOf(stops ? PlannerDecision.Stop.class : PlannerDecision.Pull.class);
        SparkMap map = (decision instanceof PlannerDecision.Pull pull
                        ? pull.setting()
                        : decision.answer().leave().orElseThrow())
                .map()
                .orElseThrow();
        SpeedRows rows = fixture.rows();
        for (int r = 0; r < rows.size(); r++) {
            assertThat(map.degAt(rows.rpm(r))).isCloseTo(fixture.numbers("next_rows_deg")[r], within(DEGREES));
        }
    }
}
