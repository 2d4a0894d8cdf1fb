package org.nextpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The table of pulls says the same of a pull in text, on the sheet and in the file. */
class PullTableTest {
    private static final String PLAN = """
            [engine]
            name = "invented two-litre"
            displacement_l = 2.0
            [dyno]
            kind = "engine-brake"
            torque_at = "crank"
            inertia_in_log = true
            [air]
            standard = "none"
            [band]
            from_rpm = 3000
            to_rpm = 6000
            """;

    @TempDir
    private Path folder;

    @Test
    void anOffsetHasItsSignAndAStandingItsWordsInEveryTable() throws IOException {
        Path plan = Files.writeString(folder.resolve("plan.toml"), PLAN);
        StringBuilder rows = new StringBuilder("Time [s],Engine speed [rpm],Torque [N.m],Spark offset [deg]\n");
        double[] offsets = {0, 2, -1.5};
        for (int row = 0; row < 1500; row++) {
            double offset = offsets[row / 500];
            rows.append(row / 50.0 + "," + (2500 + 8 * (row % 500)) + "," + (180 + offset) + "," + offset + "\n");
        }
        Path log = Files.writeString(folder.resolve("pulls.csv"), rows);
        Run text = Run.of("advise", "--plan", plan.toString(), "--no-notebook", log.toString());
        assertThat(text.out())
                .containsPattern("pull +advance +N·m +kW +knock +use")
                .containsPattern("2 +\\+2.0 +182.0 +[0-9.]+ +not measured +used")
                .containsPattern("3 +-1.5 +178.5 +[0-9.]+ +not measured +used");

        Path sheet = folder.resolve("sheet.html");
        Run report =
                Run.of("report", "--plan", plan.toString(), "--no-notebook", "--out", sheet.toString(), log.toString());
        assertThat(report.status()).as(report.err()).isZero();
        String shown = Files.readString(sheet).replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ");
        assertThat(shown).contains("2 +2.0 182.0 ").contains("not measured used ");
        assertThat(Files.readString(folder.resolve("sheet.csv"))).contains("2,,2.00,,182.000,", ",,,,yes,used,");
    }
}
