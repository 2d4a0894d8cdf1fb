package org.nextpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Knock that was written on paper forbids, however the row was written. */
class KnockInTablesTest {
    @TempDir
    private Path folder;

    private JsonNode advised(int marginDeg, String table) throws IOException {
        Path plan = folder.resolve("plan.toml");
        Files.writeString(plan, """
                [timing]
                start_deg = 20
                least_deg = 16
                most_deg = 36
                largest_step_deg = 2
                resolution_deg = 0.5
                [limits]
                knock_margin_deg = %d
                """.formatted(marginDeg));
        Path log = folder.resolve("pulls.csv");
        Files.writeString(log, table);
        Run run = Run.of("advise", "--no-notebook", "--json", "--plan", plan.toString(), log.toString());
        assertThat(run.status()).as(run.err()).isZero();
        return run.json();
    }

    /** What goes into the engine: the next setting, after a stop the one that stays. */
    private static double next(JsonNode advice) {
        boolean stops = advice.at("/next/action").asText().equals("stop");
        JsonNode next = advice.at(stops ? "/chosen/advance_deg" : "/next/advance_deg");
        assertThat(next.isNumber()).as(advice.at("/next").toString()).isTrue();
        return next.asDouble();
    }

    @ParameterizedTest
    @ValueSource(strings = {"4,24,,yes", "4,24,18O,yes", "4,24,187,yes (light)", "4,24,187,knocked", "4,24,187,yes"})
    void aRowThatKnockedForbidsEvenIfItCannotBeUsed(String row) throws IOException {
        JsonNode advice =
                advised(2, "order,advance_deg,torque_nm,knock\n1,20,180,no\n2,20,180.4,no\n3,22,183,no\n" + row + "\n");
        assertThat(next(advice)).isLessThan(22);
    }

    /** What nothing watches is named once with its reason, not once for each limit. */
    @Test
    void limitsThatNothingWatchedForOneReasonAreNamedTogether() throws IOException {
        Path log = Files.writeString(folder.resolve("paper.csv"), "order,advance_deg,torque_nm\n1,20,190\n2,22,193\n");
        assertThat(Run.of("advise", "--no-notebook", "--plan", "sweep-plans/hillclimb-knock.toml", log.toString())
                        .out())
                .startsWith("Not watched: knock (not measured, in every pull); lambda, exhaust temperature, ")
                .containsOnlyOnce("not logged, in every pull");
    }

    @Test
    void theScatterOfAMixtureThatNobodySweepsDoesNotLiftTheBan() throws IOException {
        JsonNode advice = advised(5, """
                order,advance_deg,lambda,torque_nm,knock
                1,20,0.869,180,no
                2,20,0.872,180.4,no
                3,22,0.871,183,no
                4,24,0.870,185,yes
                """);
        assertThat(next(advice)).isLessThan(19);
    }

    @Test
    void theSpellingOfAFuelDoesNotLiftTheBan() throws IOException {
        JsonNode advice = advised(2, """
                order,advance_deg,torque_nm,knock,fuel
                1,20,180,no,e10
                2,20,180.4,no,e10
                3,22,183,no,e10
                4,24,185,yes,e10
                5,20,180.2,no,E10
                """);
        assertThat(next(advice)).isLessThan(22);
    }

    @Test
    void aSettingThatKnockForbidsIsNotLeftInTheEngine() throws IOException {
        JsonNode advice = advised(2, """
                order,advance_deg,torque_nm,knock
                1,20,180,no
                2,20,180.2,no
                3,17.5,180.2,yes
                """);
        assertThat(advice.at("/next/action").asText()).isEqualTo("stop");
        assertThat(advice.findValues("leave").toString()).doesNotContain("20");
    }
}
