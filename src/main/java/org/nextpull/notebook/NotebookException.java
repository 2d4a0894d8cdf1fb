package org.nextpull.notebook;

import java.io.IOException;
import org.nextpull.finding.Finding;

/** The notebook could not be read or written. What was kept before is still there. */
public final class NotebookException extends IOException {
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
}
