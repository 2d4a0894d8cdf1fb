package org.nextpull.live;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SessionFoldersTest {
    private static final Instant START = Instant.parse("2026-11-25T08:15:30.5Z");

    @Test
    void theyLieBesideTheNotebookAndAreNamedByTheirStart(@TempDir Path folder) {
        Path fresh = SessionFolders.beside(folder.resolve("shop.db")).fresh(START);
        assertThat(folder.relativize(fresh)).isEqualTo(Path.of("shop-sessions", "20261125T081530Z"));
        assertThat(fresh).doesNotExist();
    }

    @Test
    void twoOfOneSecondHaveNamesOfTheirOwnAndTheLaterIsTheNewest(@TempDir Path folder) throws Exception {
        SessionFolders folders = SessionFolders.beside(folder.resolve("notebook"));
        assertThat(folders.newest()).isEmpty();
        Path first = Files.createDirectories(folders.fresh(START));
        Path second = Files.createDirectories(folders.fresh(START));
        assertThat(second).isNotEqualTo(first);
        assertThat(folders.newest()).contains(second);
        Path later = Files.createDirectories(folders.fresh(START.plusSeconds(86_400)));
        Files.createDirectories(folders.folder().resolve("zz-not-a-session"));
        assertThat(folders.newest()).contains(later);
    }
}
