package org.nextpull.notebook;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.sqlite.SQLiteErrorCode;

/** The notebook could not be read or written. What was kept before is still there. */
public final class NotebookException extends IOException {
    private static final int PRIMARY = 0xff;
    private static final long serialVersionUID = 1;

    private final transient Finding finding;

    NotebookException(Finding finding, Throwable cause) {
        super(finding.code().id(), cause);
        this.finding = finding;
    }

    NotebookException(Finding finding) {
        super(finding.code().id());
        this.finding = finding;
    }

    /** What went wrong, for a reader. */
    public Finding finding() {
        return finding;
    }

    static NotebookException of(SQLException fault, Path file) {
        return new NotebookException(
                Finding.error(code(fault), Place.inFile(file.toString()), Detail.of("why", why(fault))), fault);
    }

    /** A value that no version of the program writes. */
    static NotebookException strange(IllegalArgumentException fault, Path file) {
        return new NotebookException(
                Finding.error(
                        FindingCode.NOTEBOOK_STRANGE_VALUE,
                        Place.inFile(file.toString()),
                        Detail.of("why", String.valueOf(fault.getMessage()))),
                fault);
    }

    static NotebookException because(FindingCode code, Path file, Detail... details) {
        return new NotebookException(Finding.error(code, Place.inFile(file.toString()), details));
    }

    static NotebookException noSession(Path file, long session) {
        return because(FindingCode.NOTEBOOK_NO_SUCH_SESSION, file, Detail.of("session", String.valueOf(session)));
    }

    /** The first fault of a plan that was good when it was kept: another version of the program reads plans otherwise. */
    static NotebookException planUnreadable(Path file, List<Finding> faults) {
        String first = faults.stream()
                .filter(Finding::isError)
                .findFirst()
                .map(fault -> fault.code().id()
                        + fault.place().key().map(key -> " " + key).orElse(""))
                .orElse("");
        return because(FindingCode.NOTEBOOK_PLAN_UNREADABLE, file, Detail.of("why", first));
    }

    private static FindingCode code(SQLException fault) {
        return switch (SQLiteErrorCode.getErrorCode(fault.getErrorCode() & PRIMARY)) {
            case SQLITE_BUSY, SQLITE_LOCKED -> FindingCode.NOTEBOOK_LOCKED;
            case SQLITE_CORRUPT -> FindingCode.NOTEBOOK_DAMAGED;
            case SQLITE_NOTADB -> FindingCode.NOTEBOOK_NOT_ONE;
            case SQLITE_READONLY, SQLITE_PERM, SQLITE_AUTH -> FindingCode.NOTEBOOK_READ_ONLY;
            case SQLITE_FULL -> FindingCode.NOTEBOOK_DISK_FULL;
            case SQLITE_CANTOPEN -> FindingCode.NOTEBOOK_CANNOT_OPEN;
            default -> FindingCode.NOTEBOOK_FAILED;
        };
    }

    private static String why(SQLException fault) {
        return String.valueOf(fault.getMessage()).replaceAll("\\s+", " ").strip();
    }
}
