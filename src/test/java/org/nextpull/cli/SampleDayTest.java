package org.nextpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The shipped days that follow the advice tell a whole story when they are replayed, and end beside the truth. */
class SampleDayTest {
    private static final double MOST_LEFT_PERCENT = 0.5;

    private static JsonNode replayed(String name) {
        return Run.of("replay --json --plan sweep-plans/" + name + ".toml sample-logs/" + name + ".csv")
                .json();
    }

    private static double truth(String name, String table, String key) throws IOException {
        boolean inside = false;
        for (String line : Files.readAllLines(Path.of("sample-logs", ".truth", name + ".toml"))) {
            inside = line.startsWith("[") ? line.equals("[" + table + "]") : inside;
            if (inside && line.startsWith(key + " = ")) {
                return Double.parseDouble(line.substring(key.length() + 3));
            }
        }
        throw new AssertionError(name + " has no " + table + "." + key);
    }

    @Test
    void theKnockDayStaysStoppedAndClaimsNoBestTorque() {
        String files = " --plan sweep-plans/hillclimb-knock.toml sample-logs/hillclimb-knock.csv";
        JsonNode replay = Run.of("replay --json" + files).json();
        int stopped = replay.path("stopped_after").asInt();
        assertThat(stopped).isBetween(6, 9);
        for (int step = stopped - 1; step < replay.path("steps").size(); step++) {
            assertThat(replay.path("steps").get(step).at("/next/action").asText())
                    .isEqualTo("stop");
        }
        assertThat(replay.at("/next/action").asText()).isEqualTo("stop");
        assertThat(replay.at("/chosen/by").asText()).isEqualTo("knock-limit");
        assertThat(replay.at("/timing/best_deg").isNull()).isTrue();
        assertThat(replay.at("/timing/low_deg").isNull()).isTrue();
        double capped = replay.at("/timing/capped_deg").asDouble();
        assertThat(replay.at("/chosen/advance_deg").asDouble()).isBetween(capped - 0.5, capped);
        String text = Run.of("replay" + files).out();
        assertThat(text)
                .contains(
                        "knock-limited advance "
                                + replay.at("/timing/capped_deg").asText() + " deg",
                        "The stop after pull " + (stopped + 1) + " stands: the ")
                .doesNotContain("best-torque", "pulls: MBT ");
    }

    @Test
    void everyRowOfTheBandIsStatedOrSaidToHaveNoBest() {
        JsonNode timing = Run.of(
                        "advise --json --plan sweep-plans/hillclimb-e10-day.toml sample-logs/hillclimb-e10-day.csv")
                .json()
                .path("timing");
        List<Integer> rows = new ArrayList<>();
        timing.path("rows").forEach(row -> rows.add(row.path("rpm").asInt()));
        assertThat(timing.path("open_rows"))
                .isNotEmpty()
                .allSatisfy(row -> assertThat(row.path("why").asText()).isIn("not-bracketed", "too-few-pulls"));
        timing.path("open_rows").forEach(row -> rows.add(row.path("rpm").asInt()));
        assertThat(rows)
                .containsExactlyInAnyOrderElementsOf(
                        IntStream.rangeClosed(14, 27).mapToObj(row -> 250 * row).toList());
    }

    private static List<String> codes(JsonNode replay) {
        List<String> codes = new ArrayList<>();
        replay.path("steps").forEach(step -> codes.add(step.at("/next/code").asText()));
        return codes;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"hillclimb-e10-timing", "hillclimb-e10-day", "hillclimb-e10-mixture", "hatchback-roller-mixture"
            })
    void aDayThatFollowsTheAdviceBeginsAtTheStartAndEndsWithAStop(String name) {
        JsonNode replay = replayed(name);
        List<String> codes = codes(replay);
        assertThat(codes.get(codes.size() - 1)).isIn("settled", "scatter-limited");
        assertThat(codes.subList(0, codes.size() - 1))
                .as("one path: no code of a stop on the way")
                .allMatch(code -> List.of(
                                "baseline",
                                "climb-timing",
                                "bracket-timing",
                                "explore",
                                "rich-step",
                                "climb-mixture",
                                "bracket-mixture",
                                "confirm")
                        .contains(code));
        assertThat(replay.at("/next/action").asText()).isEqualTo("stop");
        assertThat(replay.path("stopped_after").asInt())
                .isEqualTo(replay.path("steps").size());
        assertThat(replay.path("pulls_saved").asInt()).isZero();
        assertThat(replay.at("/chosen/by").asText()).isEqualTo("peak");
    }

    @ParameterizedTest
    @ValueSource(strings = {"hillclimb-e10-timing", "hillclimb-e10-day"})
    void theTimingHoldsTheTruth(String name) throws IOException {
        JsonNode timing = replayed(name).path("timing");
        assertThat(timing.path("bracketed").asBoolean()).isTrue();
        assertThat(truth(name, "timing", "best_deg"))
                .isBetween(
                        timing.path("low_deg").asDouble(),
                        timing.path("high_deg").asDouble());
    }

    @ParameterizedTest
    @ValueSource(strings = {"hillclimb-e10-day", "hillclimb-e10-mixture", "hatchback-roller-mixture"})
    void theMixtureHoldsTheTruth(String name) throws IOException {
        JsonNode mixture = replayed(name).path("mixture");
        assertThat(mixture.path("bracketed").asBoolean()).isTrue();
        assertThat(truth(name, "mixture", "peak_lambda"))
                .isBetween(
                        mixture.path("low_lambda").asDouble(),
                        mixture.path("high_lambda").asDouble());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"hillclimb-e10-timing", "hillclimb-e10-day", "hillclimb-e10-mixture", "hatchback-roller-mixture"
            })
    void littleTorqueIsLeft(String name) throws IOException {
        assertThat(truth(name, "left", "torque_left_percent")).isLessThan(MOST_LEFT_PERCENT);
    }

    /** By hand and past the knock: the advice would have ended the day sooner. */
    @Test
    void theKnockingDayShowsWhatReplaySaves() {
        JsonNode replay = replayed("hillclimb-knock");
        assertThat(codes(replay)).contains("knock-limited");
        assertThat(replay.path("pulls_saved").asInt()).isPositive();
        assertThat(replay.at("/chosen/by").asText()).isEqualTo("knock-limit");
    }
}
