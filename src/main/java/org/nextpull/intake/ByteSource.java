package org.nextpull.intake;

import java.io.IOException;
import java.io.InputStream;

/** Bytes with a name that can be read from their start, any number of times; nothing is opened before it is asked for. */
public interface ByteSource {
    /** The name that findings give to it: the file as the user named it, {@code day.zip/pull-1.csv} for an entry of a zip. */
    String name();

    /** How many bytes there are, as far as that can be told without reading them: of packed ones as they lie there; 0 where it is not known. */
    default long size() {
        return 0;
    }

    /** Opens the bytes, unpacked. The caller closes the stream. */
    InputStream open() throws IOException;
}
