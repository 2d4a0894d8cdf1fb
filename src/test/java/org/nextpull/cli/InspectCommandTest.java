package org.nextpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.nextpull.app.LogArchive;
import org.nextpull.plan.SweepPlan;

class InspectCommandTest {
    private static final Path LOG = Path.of("sample-logs/hillclimb-e10-timing.csv");

    @TempDir
    private Path folder;

    /** Eleven good logs and one that is none, which comes second. */
    private List<String> archive() throws IOException {
        for (int day = 0; day < 12; day++) {
            Path file = folder.resolve("day-" + day + ".csv");
            if (day == 1) {
                Files.writeString(file, "nothing that a logger writes");
            } else {
                Files.copy(LOG, file);
            }
        }
        return List.of(folder.toString());
    }

    @Test
    void oneBadFileStopsNothingAndIsSummedUpAtTheEnd() throws IOException {
        Run run = Run.of("inspect", archive().get(0), "--json", "--lines");
        List<String> lines = run.out().lines().toList();
        assertThat(lines).hasSize(11).allMatch(line -> line.contains("\"rows\":"));
        assertThat(lines.get(0)).contains("day-0.csv");
        assertThat(lines.get(1)).contains("day-2.csv");
        assertThat(lines.get(10)).contains("day-11.csv");
        assertThat(run.err()).contains("day-1.csv").contains("1 of 12 files could not be used");
        assertThat(run.status()).isEqualTo(ExitCodes.BAD_INPUT);
    }

    @Test
    void theLineOfProgressTellsFilesSpeedAndTimeLeft() throws IOException {
        LogArchive archive = new LogArchive(SweepPlan.defaults(), archive());
        assertThat(InspectCommand.ProgressLine.text(archive.progress(), 1))
                .isEqualTo("[....................] 0 of 12 files, 0 MB/s");
        archive.read(looked -> {});
        assertThat(InspectCommand.ProgressLine.text(archive.progress(), 0.5))
                .startsWith("[####################] 12 of 12 files, ")
                .endsWith(" MB/s, 0 s left");
    }
}
