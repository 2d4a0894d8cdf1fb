package org.nextpull.pull;

import org.nextpull.channel.Samples;

/** Tells row by row whether the engine is at full load. */
interface LoadGate {
    /** Looks at the next row. */
    boolean isLoaded(Samples samples, int row);

    /** Forgets what came before: another run begins. */
    void restart();
}
