package org.nextpull.response;

import java.util.Locale;

/** Whether a pull counts, and if not, why. */
public enum PullStatus {
    USED,
    /** It ended before it spanned the band. */
    CUT_SHORT,
    /** The finder refused it for another reason, which its findings name. */
    REFUSED,
    /** The operator struck it, or the table says that it does not count. */
    STRUCK,
    /** It is no pull at all: a stretch under load that is kept for the knock in it. */
    NO_PULL,
    /** The plan throws away the first pulls, which warm the engine. */
    THROWN_AWAY;

    public boolean isUsed() {
        return this == USED;
    }

    /** As JSON writes it: {@code cut-short}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
