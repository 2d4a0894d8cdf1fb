package org.nextpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.channel.Role;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.TimingPlan;
import org.nextpull.plan.text.PlanText;
import org.nextpull.unit.Unit;

class PlanCommandTest {
    private static final String LOG = "sample-logs/hillclimb-e10-timing.csv";
    private static final String CHECK = "plan --check sweep-plans/hillclimb-e10-timing.toml ";

    private static SweepPlan plan(String log) {
        return PlanText.read(Run.of("plan " + log).out(), "first.toml").value().orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"hillclimb-e10-timing", "hillclimb-e10-map", "hillclimb-e10-mixture", "hillclimb-knock"})
    void aFirstPlanIsOneThatTheLogCanBeReadWith(String name, @TempDir Path folder) throws IOException {
        String log = "sample-logs/" + name + ".csv";
        Path file = folder.resolve("first.toml");
        assertThat(Run.of("plan --out " + file + " " + log).status()).isZero();
        Run advise = Run.of("advise --plan " + file + " " + log);
        assertThat(advise.status()).as(advise.err()).isZero();
    }

    /** Limits that somebody typed into it would be gone. */
    @Test
    void aPlanThatIsThereIsNotOverwritten(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("mine.toml"), "# mine");
        Run again = Run.of("plan --out " + file + " " + LOG);
        assertThat(again.status()).isEqualTo(1);
        assertThat(again.err()).contains("is there already", "choose another name");
        assertThat(file).hasContent("# mine");
    }

    @Test
    void aLogOfRollerSpeedsAsksForTheGearing() {
        assertThat(Run.of("plan sample-logs/hatchback-roller-mixture.csv").out())
                .contains("# engine_rev_per_roller_rev =")
                .contains("These are speeds of the roller");
    }

    /** Whoever follows it blindly gets no further than the log went. */
    @Test
    void aFirstPlanAllowsNoMoreAdvanceThanWasRunAndNoMixtureSweep() {
        SweepPlan plan = plan(LOG);
        TimingPlan timing = plan.timing().orElseThrow();
        assertThat(timing.start().deg()).isEqualTo(20);
        assertThat(timing.most().deg()).isEqualTo(greatestAdvance());
        assertThat(plan.mixture()).isEmpty();
        assertThat(plan.limits().set()).extracting(Enum::name).containsExactly("KNOCK");
    }

    private static double greatestAdvance() {
        double most = 0;
        for (var pull : Run.of("advise --json --plan sweep-plans/hillclimb-e10-timing.toml " + LOG)
                .json()
                .path("pulls")) {
            most = Math.max(most, pull.path("advance_deg").asDouble());
        }
        return Math.ceil(most * 2 - 0.2) / 2;
    }

    @Test
    void everyPullRunsThroughTheBandOfAFirstPlan() {
        SweepPlan plan = plan(LOG);
        for (var pull :
                Run.of("inspect --json " + LOG).json().path("files").get(0).path("pulls")) {
            if (pull.path("used").asBoolean()) {
                assertThat(pull.path("from_rpm").asDouble())
                        .isLessThan(plan.band().orElseThrow().speeds().fromRpm() + 25);
                assertThat(pull.path("to_rpm").asDouble())
                        .isGreaterThan(plan.band().orElseThrow().speeds().toRpm() - 25);
            }
        }
    }

    @Test
    void theLimitsThatNothingWatchesAreNamed(@TempDir Path folder) throws IOException {
        assertThat(Run.of(CHECK + LOG).out())
                .contains("exhaust_temperature, in every pull")
                .contains("no limit is set")
                .doesNotContain("NOT WATCHED");
        Path cut = folder.resolve("no-exhaust.csv");
        Files.writeString(cut, Files.readString(Path.of(LOG)).replaceFirst("Exhaust temp", "Gizmo"));
        assertThat(Run.of(CHECK + cut).out())
                .contains("NOT WATCHED: not logged, in every pull")
                .contains("knock_events, in every pull");
    }

    /** The way out of a log whose columns are not known: its lines in a file, and the plan that is made keeps them. */
    @Test
    void whatIsToldOfTheColumnsIsReadAndKeptInTheFirstPlan(@TempDir Path folder) throws IOException {
        Path log = Files.writeString(
                folder.resolve("load-cell.csv"),
                Files.readString(Path.of(LOG))
                        .replaceFirst("Torque \\[N.m\\]", "Load cell")
                        .replaceFirst("Lambda", "WB2"));
        assertThat(Run.of("plan " + log).err()).contains("columns.torque = \"Load cell\"", "given as --plan");
        Path told = Files.writeString(
                folder.resolve("told.toml"),
                "[log]\ncolumns.torque = \"Load cell\"\nunits.torque = \"lbf.ft\"\nlambda_delay_s = 0.2\n");
        Path file = folder.resolve("first.toml");
        Run made = Run.of("plan --plan " + told + " --out " + file + " " + log);
        assertThat(made.status()).as(made.err()).isZero();
        assertThat(file)
                .content()
                .contains("Load cell is torque in lbf.ft")
                .contains("\n# columns.lambda = \"WB2\"  ", "by its values");
        Files.writeString(file, Files.readString(file).replace("# columns.lambda", "columns.lambda"));
        SweepPlan.LogFacts kept = PlanText.read(Files.readString(file), "first.toml")
                .value()
                .orElseThrow()
                .log();
        assertThat(kept.hints().headers()).containsOnlyKeys(Role.TORQUE, Role.LAMBDA);
        assertThat(kept.hints().units()).containsEntry(Role.TORQUE, Unit.POUND_FOOT);
        assertThat(kept.lambdaDelayS()).hasValue(0.2);
        assertThat(Run.of("inspect --plan " + file + " " + log).out()).containsPattern("WB2 +lambda");
    }

    @Test
    void aLevelOfKnockIsNotSaidToBeMissing(@TempDir Path folder) throws IOException {
        Path log = folder.resolve("level.csv");
        Files.writeString(
                log,
                Files.readString(Path.of(LOG))
                        .replaceFirst("Knock count", "Knock level [V]")
                        .replaceFirst("Coolant temp \\[degC]", "\"Coolant\n[degC]\""));
        Path file = folder.resolve("first.toml");
        Run made = Run.of("plan --out " + file + " " + log);
        assertThat(made.status()).as(made.err()).isZero();
        assertThat(file)
                .content()
                .contains(
                        "Only a level is logged: without knock_level",
                        "# knock_level =  ",
                        "In these pulls at most 0.");
        Files.writeString(file, Files.readString(file).replace("# knock_level =", "knock_level = 1.5"));
        assertThat(Run.of("plan --check " + file + " " + log).out())
                .containsPattern("knock_level 1.5 +knock_events or knock_level, in every pull");
    }

    @Test
    void theScaleOfAnAirFuelRatioIsAskedFor(@TempDir Path folder) throws IOException {
        Path log = folder.resolve("afr.csv");
        List<String> lines = Files.readAllLines(Path.of(LOG));
        Files.writeString(
                log,
                lines.stream()
                        .map(line -> line.replaceFirst(",Lambda,", ",AFR [-],"))
                        .map(line -> line.replaceFirst("^((?:[^,]*,){4})0\\.8", "$112.8"))
                        .collect(Collectors.joining("\n")));
        assertThat(Run.of("plan " + log).out()).contains("without afr_scale under [log]", "\n# afr_scale =");
    }

    @Test
    void misuseIsSaidInASentence(@TempDir Path folder) throws IOException {
        Path empty = Files.writeString(folder.resolve("idle.csv"), "Time,RPM,Torque Nm\n0,900,5\n0.1,900,5\n");
        assertThat(Run.of("plan").status()).isEqualTo(2);
        assertThat(Run.of("plan --plan " + empty + " --check " + empty).status())
                .isEqualTo(2);
        assertThat(Run.of("plan " + empty).err()).contains("holds no pull that a plan could be made from");
        assertThat(Run.of("plan --out " + empty + " " + LOG + " " + empty).err())
                .contains("is not overwritten");
        assertThat(Run.of("plan --check " + folder.resolve("none.toml")).status())
                .isEqualTo(1);
    }
}
