package org.nextpull.intake;

import java.io.IOException;

/** Thrown in the middle of a packed source that unpacks to more than any log does, such as one made to fill memory or time. */
public final class OverpackedException extends IOException {
    private static final long serialVersionUID = 1;

    /** Unpacked bytes to each packed one that no log of moving values reaches. Common practice, no source. */
    public static final int MOST_TIMES = 100;

    OverpackedException() {
        super("unpacks to more than " + MOST_TIMES + " times its size");
    }
}
