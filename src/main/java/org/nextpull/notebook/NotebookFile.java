package org.nextpull.notebook;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import org.nextpull.finding.Detail;
import org.nextpull.finding.FindingCode;
import org.sqlite.JDBC;
import org.sqlite.SQLiteConfig;

/** Opens the file. */
final class NotebookFile {
    private static final int BUSY_MS = 5_000;

    private NotebookFile() {}

    /** Opens it for writing; makes it, and its folder, where there is none. */
    static Database open(Path file) throws IOException {
        makeFolder(file);
        SQLiteConfig config = config();
        // a commit must outlive a power cut, not only the program
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        Database database = connect(file, file.toAbsolutePath().toString(), config);
        return checked(database, () -> {
            Schema.check(database);
            requireWritable(database);
            database.list("pragma journal_mode = wal", row -> row.text("journal_mode"));
            Schema.migrate(database);
        });
    }

    /** Opens it for reading only; it must be there. */
    static Database openReadOnly(Path file) throws IOException {
        if (!Files.exists(file)) {
            throw NotebookException.because(FindingCode.NOTEBOOK_MISSING, file);
        }
        SQLiteConfig config = config();
        config.setReadOnly(true);
        Database database = connect(file, uri(file), config);
        return checked(database, () -> {
            Schema.check(database);
            if (Schema.version(database) < Schema.newest()) {
                throw NotebookException.because(
                        FindingCode.NOTEBOOK_OLDER,
                        file,
                        Detail.of("version", Schema.version(database)),
                        Detail.of("known", Schema.newest()));
            }
        });
    }

    private interface Check {
        void run() throws IOException;
    }

    private static Database checked(Database database, Check check) throws IOException {
        boolean good = false;
        try {
            check.run();
            good = true;
            return database;
        } finally {
            if (!good) {
                database.close();
            }
        }
    }

    private static SQLiteConfig config() {
        SQLiteConfig config = new SQLiteConfig();
        config.enforceForeignKeys(true);
        config.setBusyTimeout(BUSY_MS);
        return config;
    }

    /**
     * A file in a folder that nobody may write to has no room for the index of its log; where there is no log either, it can be read as
     * it lies there.
     */
    private static String uri(Path file) {
        Path folder = file.toAbsolutePath().getParent();
        Path log = file.resolveSibling(file.getFileName() + "-wal");
        boolean alone = folder != null && !Files.isWritable(folder) && !Files.exists(log);
        return alone
                ? "file:" + file.toAbsolutePath().toUri().getRawPath() + "?immutable=1"
                : file.toAbsolutePath().toString();
    }

    private static void requireWritable(Database database) throws NotebookException {
        // opening alone does not tell: a file without write permission is then quietly opened for reading
        if (Files.exists(database.file()) && !Files.isWritable(database.file())) {
            throw NotebookException.because(
                    FindingCode.NOTEBOOK_READ_ONLY, database.file(), Detail.of("why", "no permission to write"));
        }
    }

    private static void makeFolder(Path file) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        try {
            if (folder != null) {
                Files.createDirectories(folder);
            }
        } catch (IOException refused) {
            throw NotebookException.because(
                    FindingCode.NOTEBOOK_CANNOT_OPEN,
                    file,
                    Detail.of("why", "the folder " + folder + " cannot be made"));
        }
        if (Files.isDirectory(file)) {
            throw NotebookException.because(FindingCode.NOTEBOOK_CANNOT_OPEN, file, Detail.of("why", "it is a folder"));
        }
    }

    private static Database connect(Path file, String address, SQLiteConfig config) throws NotebookException {
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            // the library would wait for ever for what a pipe sends
            throw NotebookException.because(FindingCode.NOTEBOOK_CANNOT_OPEN, file, Detail.of("why", "it is no file"));
        }
        try {
            Connection connection = JDBC.createConnection(JDBC.PREFIX + address, config.toProperties());
            Database database = new Database(file, connection);
            database.script(List.of("pragma trusted_schema = off"));
            return database;
        } catch (SQLException fault) {
            throw NotebookException.of(fault, file);
        } catch (LinkageError missing) {
            throw NotebookException.because(
                    FindingCode.NOTEBOOK_NO_LIBRARY, file, Detail.of("why", String.valueOf(missing.getMessage())));
        }
    }

    static Notebook.Copy backUp(Database database, Path target) throws IOException {
        if (Files.exists(target)) {
            throw NotebookException.because(FindingCode.NOTEBOOK_BACK_UP_EXISTS, target);
        }
        Path folder = target.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw NotebookException.because(
                    FindingCode.NOTEBOOK_CANNOT_OPEN, target, Detail.of("why", "there is no folder " + folder));
        }
        Path part = target.resolveSibling(target.getFileName() + ".part");
        Files.deleteIfExists(part);
        try {
            database.run("vacuum into ?", part.toString());
            syncToDisk(part);
            int sessions = readBack(part);
            Files.move(part, target);
            return new Notebook.Copy(target, sessions, Files.size(target));
        } catch (FileAlreadyExistsException raced) {
            throw NotebookException.because(FindingCode.NOTEBOOK_BACK_UP_EXISTS, target);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    private static void syncToDisk(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    /** A copy that was never read is none. */
    private static int readBack(Path file) throws IOException {
        try (Database copy = NotebookFile.openReadOnly(file)) {
            List<String> faults = Checkup.damage(copy);
            if (!faults.isEmpty()) {
                throw NotebookException.because(FindingCode.NOTEBOOK_DAMAGED, file, Detail.of("why", faults.get(0)));
            }
            return new Summaries(copy).all().size();
        }
    }
}
