package org.nextpull.pull;

import org.nextpull.channel.Samples;

/**
 * A stretch at full load with some rows before and after it.
 *
 * @param samples all its rows
 * @param core the rows at full load
 * @param end why it ended
 */
record FullLoadStretch(Samples samples, RowRange core, End end) {
    /** Why a stretch ended. */
    enum End {
        UNLOADED,
        LOG_ENDED,
        HOLE,
        NEW_RUN,
        TOO_LONG,
        /** The data stopped while the load was on. */
        CUT
    }
}
