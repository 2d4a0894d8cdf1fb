package org.nextpull.notebook;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import org.nextpull.finding.Detail;
import org.nextpull.finding.FindingCode;

/** Copies a notebook in use: one consistent state, whole or not there. */
final class BackUp {
    private BackUp() {}

    static Copy copy(Database database, Path target) throws IOException {
        if (Files.exists(target)) {
            throw Trouble.because(FindingCode.NOTEBOOK_BACK_UP_EXISTS, target);
        }
        Path folder = target.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw Trouble.because(
                    FindingCode.NOTEBOOK_CANNOT_OPEN, target, Detail.of("why", "there is no folder " + folder));
        }
        Path part = target.resolveSibling(target.getFileName() + ".part");
        Files.deleteIfExists(part);
        try {
            database.run("vacuum into ?", part.toString());
            sync(part);
            int sessions = readBack(part);
            Files.move(part, target);
            return new Copy(target, sessions, Files.size(target));
        } catch (FileAlreadyExistsException raced) {
            throw Trouble.because(FindingCode.NOTEBOOK_BACK_UP_EXISTS, target);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    private static void sync(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    /** A copy that was never read is none. */
    private static int readBack(Path file) throws IOException {
        try (Database copy = NotebookFile.openReadOnly(file)) {
            List<String> faults = Checkup.damage(copy);
            if (!faults.isEmpty()) {
                throw Trouble.because(FindingCode.NOTEBOOK_DAMAGED, file, Detail.of("why", faults.get(0)));
            }
            return new Summaries(copy).all().size();
        }
    }
}
