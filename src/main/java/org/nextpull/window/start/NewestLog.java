package org.nextpull.window.start;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import org.nextpull.intake.folder.FolderSettings;
import org.nextpull.intake.wire.ArrivalQueue;
import org.nextpull.intake.wire.Chunk;

/** The beginning of the log in a folder that was written last: what the next one will look like. */
final class NewestLog {
    private NewestLog() {}

    /** Puts it into the queue as if it had just arrived; does nothing where there is no log. */
    static void into(ArrivalQueue queue, Path folder) throws IOException {
        Optional<Path> newest = newest(folder);
        if (newest.isPresent()) {
            String source = folder.toString();
            queue.connected(source);
            queue.fromFile(source, String.valueOf(newest.get().getFileName()), 0);
            try (InputStream in = Files.newInputStream(newest.get())) {
                byte[] beginning = in.readNBytes(Chunk.MOST_BYTES);
                queue.bytes(source, beginning, beginning.length);
            }
        }
    }

    private static Optional<Path> newest(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(Files::isRegularFile)
                    .filter(file -> FolderSettings.isLog(String.valueOf(file.getFileName())))
                    .max(Comparator.comparingLong(file -> file.toFile().lastModified()));
        }
    }
}
