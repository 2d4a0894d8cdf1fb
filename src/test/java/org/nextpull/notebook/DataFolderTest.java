package org.nextpull.notebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** XDG Base Directory Specification 0.8 for Linux; the usual places elsewhere. */
class DataFolderTest {
    private static final Path HOME = Path.of("/home/somebody");

    @Test
    void onLinuxItIsWhereTheSpecificationSays() {
        assertThat(DataFolder.of(Map.of(), "Linux", HOME)).isEqualTo(HOME.resolve(".local/share/nextpull"));
        assertThat(DataFolder.of(Map.of("XDG_DATA_HOME", "/data"), "Linux", HOME))
                .isEqualTo(Path.of("/data/nextpull"));
    }

    @Test
    void aRelativeOrEmptyVariableIsIgnoredAsTheSpecificationWants() {
        Path usual = HOME.resolve(".local/share/nextpull");
        assertThat(DataFolder.of(Map.of("XDG_DATA_HOME", "data"), "Linux", HOME))
                .isEqualTo(usual);
        assertThat(DataFolder.of(Map.of("XDG_DATA_HOME", ""), "Linux", HOME)).isEqualTo(usual);
    }

    @Test
    void elsewhereItIsInTheUsualPlace() {
        assertThat(DataFolder.of(Map.of(), "Mac OS X", HOME))
                .isEqualTo(HOME.resolve("Library/Application Support/nextpull"));
        assertThat(DataFolder.of(Map.of(), "Windows 11", HOME)).isEqualTo(HOME.resolve("AppData/Local/nextpull"));
        assertThat(DataFolder.of(Map.of("LOCALAPPDATA", "/local"), "Windows 11", HOME))
                .isEqualTo(Path.of("/local/nextpull"));
    }
}
