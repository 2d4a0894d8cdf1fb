package org.nextpull.channel;

import java.io.IOException;

/** A source of samples that can be read from its start, any number of times: a log file, a capture, the model engine. */
public interface Recording {
    /** The name that findings and results give to it, such as the file as the user named it. */
    String name();

    /**
     * Opens it for reading once; the caller closes what it gets.
     *
     * @throws IOException when the source is not there or is none that can be read
     */
    BlockReader open() throws IOException;
}
