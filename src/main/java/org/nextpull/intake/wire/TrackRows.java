package org.nextpull.intake.wire;

import org.nextpull.channel.Samples;

/**
 * Rows of one make-up of lines.
 *
 * @param track the source, and the address of its sentences where it has several
 * @param samples the rows; their time is that of the session, less the delay of the source
 */
record TrackRows(String track, Samples samples) {}
