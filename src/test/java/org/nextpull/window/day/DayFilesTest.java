package org.nextpull.window.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.nextpull.report.Shown;
import org.nextpull.session.Replay;
import org.nextpull.session.Session;
import org.nextpull.session.SessionInput;
import org.nextpull.unit.UnitSystem;
import org.nextpull.window.SampleDays;

class DayFilesTest {
    private static final Shown METRIC = new Shown(UnitSystem.METRIC);

    @TempDir
    private Path folder;

    @Test
    void whatStandsBesideWithoutASheetIsNotWrittenOver() throws IOException {
        SessionInput input = SampleDays.input("hillclimb-manifold");
        Replay day = Replay.of(input, Session.read(input));
        Path own = Files.writeString(folder.resolve("day.csv"), "somebody's own");
        assertThat(DayFiles.write(folder.toString(), "day", day, METRIC))
                .contains("day.csv is there already without", "choose another name");
        assertThat(own).hasContent("somebody's own");
        assertThat(folder.resolve("day.html")).doesNotExist();
        assertThat(DayFiles.write(folder.toString(), "other", day, METRIC)).startsWith("Wrote other.html");
        assertThat(DayFiles.write(folder.toString(), "other", day, METRIC)).startsWith("Wrote other.html");
    }
}
