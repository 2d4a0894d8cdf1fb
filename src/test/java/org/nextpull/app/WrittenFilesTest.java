package org.nextpull.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WrittenFilesTest {
    @TempDir
    private Path folder = Path.of(".");

    @Test
    void aDiskThatFillsUpLeavesWhatWasThere() throws IOException {
        Path first = Files.writeString(folder.resolve("first.html"), "old");
        Map<Path, WrittenFiles.Content> contents = new LinkedHashMap<>();
        contents.put(first, WrittenFiles.Content.of("new"));
        contents.put(folder.resolve("second.csv"), out -> {
            out.write(1);
            throw new IOException("no space left");
        });
        assertThatThrownBy(() -> WrittenFiles.write(contents)).hasMessage("no space left");
        assertThat(first).hasContent("old");
        assertThat(folder.toFile().list()).containsExactly("first.html");
    }

    @Test
    void writesThroughALinkAndForWhoeverMayReadOtherFiles() throws IOException {
        assumeTrue(FileSystems.getDefault().supportedFileAttributeViews().contains("posix"), "skipped: no links here");
        Path real = Files.writeString(folder.resolve("real.txt"), "old");
        Path link = Files.createSymbolicLink(folder.resolve("link.txt"), real);
        WrittenFiles.write(Map.of(link, WrittenFiles.Content.of("new")));
        assertThat(link).isSymbolicLink().hasContent("new");
        assertThat(real).hasContent("new");
        Path other = Files.writeString(folder.resolve("other.txt"), "");
        assertThat(Files.getPosixFilePermissions(real)).isEqualTo(Files.getPosixFilePermissions(other));
    }

    @Test
    void aFolderIsNotWrittenOver() {
        assertThatThrownBy(() -> WrittenFiles.write(Map.of(folder, WrittenFiles.Content.of("new"))))
                .isInstanceOf(FileSystemException.class)
                .hasMessageContaining("it is a folder");
        assertThat(folder).isEmptyDirectory();
    }
}
