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

    /** Thrown in the middle of a packed source that unpacks to more than any log does, such as one made to fill memory or time. */
    public static final class OverpackedException extends IOException {
        private static final long serialVersionUID = 1;

        /** Unpacked bytes to each packed one that no log of moving values reaches. Common practice, no source. */
        public static final int MOST_TIMES = 100;

        OverpackedException() {
            super("unpacks to more than " + MOST_TIMES + " times its size");
        }
    }
}
