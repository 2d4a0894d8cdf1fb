package org.nextpull.intake.capture;

import java.io.IOException;
import java.nio.ByteBuffer;

/** A file that is only appended to. */
interface Store extends AutoCloseable {
    /** Hands all remaining bytes to the operating system, or fails; after a failure part of them may be in the file. */
    void append(ByteBuffer bytes) throws IOException;

    /** Returns once what was appended is on the disk. May be called by another thread. */
    void force() throws IOException;

    /** Whether the file can still be found under its name. */
    boolean isThere();

    @Override
    void close() throws IOException;

    /** Opens the store. */
    interface Opener {
        Opened open() throws IOException;
    }

    /**
     * A store, open at its end.
     *
     * @param fileId the id that its records carry, or shall carry
     */
    record Opened(Store store, int fileId) {}
}
