package org.nextpull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.simulator.LogDialect;

/** What {@code engine write} writes is read again by the commands that read any other log, and they find what was run. */
class EngineDialectsTest {
    private static final String ENGINE = """
            [engine]
            displacement_l = 1.6
            cylinders = 4
            compression_ratio = 10.5
            [band]
            from_rpm = 4000
            to_rpm = 6000
            rows_every_rpm = 1000
            """;
    private static final String BRAKE = """
            [dyno]
            kind = "engine-brake"
            torque_at = "crank"
            inertia_in_log = true
            """;
    private static final String ROLLER = """
            [dyno]
            kind = "chassis-inertia"
            torque_at = "wheel"
            roller_inertia_kg_m2 = 60
            engine_rev_per_roller_rev = 4.3
            inertia_in_log = false
            """;
    private static final String TIMING = """
            [timing]
            start_deg = 20
            least_deg = 14
            most_deg = 36
            """;
    private static final String MIXTURE = """
            [mixture]
            start_lambda = 0.88
            richest_lambda = 0.80
            leanest_lambda = 0.95
            """;
    /** A torque is written to a tenth of the unit, some two hundred rows a pull. */
    private static final double ROUNDING_NM = 0.02;

    @TempDir
    private Path folder;

    private String file(String name, String... parts) throws IOException {
        return Files.writeString(folder.resolve(name), String.join("", parts)).toString();
    }

    private String written(String plan, String settings, String name, String... more) {
        String out = folder.resolve(name).toString();
        List<String> args = new ArrayList<>(
                List.of("engine", "write", "--plan", plan, "--seed", "7", "--settings", settings, "--out", out));
        args.addAll(List.of(more));
        Run run = Run.of(args.toArray(String[]::new));
        assertThat(run.status()).as(run.err()).isZero();
        return out;
    }

    private static JsonNode pulls(String plan, String log) {
        return Run.of("advise", "--json", "--plan", plan, log).json().path("pulls");
    }

    @Test
    void aDayIsTheSameInEveryDialect() throws IOException {
        String plan = file("plan.toml", ENGINE, BRAKE, TIMING);
        String settings = file("settings.csv", "pull,advance_deg\n1,20\n2,20\n3,23.5\n");
        JsonNode plain = null;
        List<String> channels = List.of();
        for (LogDialect dialect : LogDialect.values()) {
            String log = written(plan, settings, dialect + ".csv", "--dialect", dialect.name());
            JsonNode file =
                    Run.of("inspect", "--json", "--plan", plan, log).json().at("/files/0");
            List<String> found = new ArrayList<>();
            file.path("columns")
                    .forEach(column -> found.add(column.path("channel").asText()));
            assertThat(file.path("pulls").size()).isEqualTo(3);
            assertThat(file.path("bad_rows").asInt()).isZero();
            JsonNode advice = Run.of("advise", "--json", "--plan", plan, log).json();
            if (plain == null) {
                plain = advice;
                channels = found;
            }
            assertThat(found).isEqualTo(channels).doesNotContain("null");
            assertThat(advice.at("/next/code")).isEqualTo(plain.at("/next/code"));
            assertThat(advice.at("/next/advance_deg")).isEqualTo(plain.at("/next/advance_deg"));
            for (int pull = 0; pull < 3; pull++) {
                JsonNode ours = advice.path("pulls").get(pull);
                JsonNode theirs = plain.path("pulls").get(pull);
                assertThat(ours.path("advance_deg")).isEqualTo(theirs.path("advance_deg"));
                assertThat(ours.path("lambda").asDouble())
                        .isCloseTo(theirs.path("lambda").asDouble(), within(1e-9));
                assertThat(ours.path("mean_torque_nm").asDouble())
                        .isCloseTo(theirs.path("mean_torque_nm").asDouble(), within(ROUNDING_NM));
            }
        }
    }

    /** The engine is the same, so plateaus and an even gain give its torque alike, within scatter and what settling leaves. */
    @Test
    void steppedPullsGiveTheTorqueOfAcceleratingOnes() throws IOException {
        String settings = file("settings.csv", "pull,advance_deg\n1,20\n2,24\n");
        String even = file("even.toml", ENGINE, BRAKE, TIMING);
        String steps = file("steps.toml", ENGINE, BRAKE, TIMING, "[pull]\nkind = \"steps\"\nhold_s = 3\n");
        JsonNode accelerating = pulls(even, written(even, settings, "even.csv"));
        String log = written(steps, settings, "steps.csv");
        JsonNode file = Run.of("inspect", "--json", "--plan", steps, log).json().at("/files/0");
        assertThat(file.path("pulls"))
                .hasSize(2)
                .allMatch(pull -> pull.path("kind").asText().startsWith("steps"));
        JsonNode inspected = Run.of(
                        "inspect",
                        "--json",
                        "--plan",
                        even,
                        Path.of(log).resolveSibling("even.csv").toString())
                .json();
        assertThat(file.path("sample_hz").asDouble())
                .as("what lies between plateaus is no step from row to row")
                .isCloseTo(inspected.at("/files/0/sample_hz").asDouble(), within(0.1));
        JsonNode stepped = pulls(steps, log);
        for (int pull = 0; pull < 2; pull++) {
            assertThat(stepped.get(pull).path("used").asBoolean()).isTrue();
            double expected = accelerating.get(pull).path("mean_torque_nm").asDouble();
            assertThat(stepped.get(pull).path("mean_torque_nm").asDouble())
                    .isCloseTo(expected, within(expected * 0.005));
        }
    }

    /** Gears and tyres of the model keep 9 % and a drag, so the roller sees some 80 to 92 % of the engine's power. */
    @Test
    void aRollerSeesThePowerOfTheEngineLessWhatTheWayKeeps() throws IOException {
        String settings = file("settings.csv", "pull,lambda\n1,0.88\n2,0.80\n");
        String brake = file("brake.toml", ENGINE, BRAKE, MIXTURE);
        String roller = file("roller.toml", ENGINE, ROLLER, MIXTURE);
        JsonNode engine = pulls(brake, written(brake, settings, "brake.csv"));
        JsonNode wheel = pulls(roller, written(roller, settings, "roller.csv"));
        assertThat(wheel).hasSize(2).allMatch(pull -> pull.path("used").asBoolean());
        for (int pull = 0; pull < 2; pull++) {
            double share = wheel.get(pull).path("mean_power_kw").asDouble()
                    / engine.get(pull).path("mean_power_kw").asDouble();
            assertThat(share).isBetween(0.80, 0.92);
        }
        double atWheel = change(wheel);
        assertThat(atWheel).isCloseTo(change(engine), within(0.01));
    }

    private static double change(JsonNode pulls) {
        return pulls.get(1).path("mean_torque_nm").asDouble()
                        / pulls.get(0).path("mean_torque_nm").asDouble()
                - 1;
    }

    /** 175 kPa: the air of a mild day and 75 kPa of the charger of the example engine. */
    @Test
    void aBoostedEngineLogsItsManifoldPressure() throws IOException {
        String boosted = ENGINE.replace("cylinders = 4", "cylinders = 4\ninduction = \"boosted\"");
        String plan =
                file("plan.toml", boosted, BRAKE, TIMING.replace("14", "0").replace("20", "6"));
        String settings = file("settings.csv", "pull,advance_deg\n1,6\n2,6\n");
        String log = written(plan, settings, "boosted.csv");
        JsonNode columns =
                Run.of("inspect", "--json", "--plan", plan, log).json().at("/files/0/columns");
        assertThat(columns).anyMatch(column -> column.path("channel").asText().equals("manifold_pressure"));
        List<String> lines = Files.readAllLines(Path.of(log));
        List<String> header = List.of(lines.get(2).split(",", -1));
        int manifold = header.indexOf("Manifold pressure [kPa]");
        double most = lines.stream()
                .skip(3)
                .mapToDouble(
                        line -> Double.parseDouble(List.of(line.split(",", -1)).get(manifold)))
                .max()
                .orElseThrow();
        assertThat(most).isBetween(170.0, 177.0);
        assertThat(Run.of("advise", "--plan", plan, log).status()).isZero();
    }

    @ParameterizedTest
    @CsvSource({
        "displacement_l = 90, cylinders = 1, displacement_l and cylinders",
        "displacement_l = 0.01, cylinders = 4, displacement_l and cylinders",
        "cylinders = 4, compression_ratio = 2, compression_ratio",
        "from_rpm = 500, to_rpm = 1000, from_rpm",
        "from_rpm = 9000, to_rpm = 19000, to_rpm"
    })
    void anEngineThatNobodyBuildsIsRefusedByName(String first, String second, String name) throws IOException {
        String engine = changed(changed(ENGINE, first), second);
        String plan = file("plan.toml", engine, BRAKE, TIMING);
        Run said = Run.of(
                "engine",
                "write",
                "--plan",
                plan,
                "--seed",
                "7",
                "--out",
                folder.resolve("log.csv").toString());
        assertThat(said.status()).as(said.err()).isEqualTo(1);
        assertThat(said.err()).contains("The model engine cannot follow").contains(name);
    }

    private static String changed(String text, String line) {
        String key = line.substring(0, line.indexOf(" ="));
        return text.replaceAll("(?m)^" + key + " = .*$", line);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 5000})
    void aRollerThatGivesNoCurveIsRefused(double inertia) throws IOException {
        String plan = file("plan.toml", ENGINE, ROLLER.replace("kg_m2 = 60", "kg_m2 = " + inertia), MIXTURE);
        Run said = Run.of(
                "engine",
                "write",
                "--plan",
                plan,
                "--seed",
                "7",
                "--out",
                folder.resolve("log.csv").toString());
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.err()).contains("roller_inertia_kg_m2");
    }

    @Test
    void aMixtureThatNothingBurnsIsRefused() throws IOException {
        String plan =
                file("plan.toml", ENGINE, BRAKE, MIXTURE.replace("0.88", "0.5").replace("0.80", "0.45"));
        Run said = Run.of(
                "engine",
                "write",
                "--plan",
                plan,
                "--seed",
                "7",
                "--out",
                folder.resolve("log.csv").toString());
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.err()).contains("start_lambda");
    }
}
