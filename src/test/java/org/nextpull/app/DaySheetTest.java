package org.nextpull.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.report.Shown;
import org.nextpull.unit.UnitSystem;

class DaySheetTest {
    private static final DaySheet.Order ORDER =
            DaySheet.Order.usual(LocalDate.EPOCH, "test", new Shown(UnitSystem.METRIC));

    @TempDir
    private Path folder = Path.of(".");

    @Test
    void whatStandsBesideWithoutASheetIsNotWrittenOver() throws IOException {
        DaySheet day = DaySheet.of(DayReader.day(
                        new NotebookAccess(folder.resolve("none.db"), false),
                        Optional.of("sweep-plans/hillclimb-manifold.toml"),
                        List.of(LabelledLog.unlabelled("sample-logs/hillclimb-manifold.csv")))
                .value()
                .orElseThrow());
        Path own = Files.writeString(folder.resolve("day.csv"), "somebody's own");
        assertThat(DaySheet.write(folder.toString(), "day", day, ORDER).findings())
                .extracting(Finding::code)
                .containsExactly(FindingCode.FILE_OF_ANOTHER);
        assertThat(own).hasContent("somebody's own");
        assertThat(folder.resolve("day.html")).doesNotExist();
        Path other = folder.resolve("new");
        assertThat(DaySheet.write(other.toString(), "other", day, ORDER).value())
                .contains(other);
        assertThat(DaySheet.write(other.toString(), "other", day, ORDER).value())
                .contains(other);
        assertThat(DaySheet.write(own.toString(), "other", day, ORDER).findings())
                .extracting(finding -> finding.text("why"))
                .containsExactly(Optional.of("a file of that name is in the way"));
    }
}
