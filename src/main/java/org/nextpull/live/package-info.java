/**
 * A running session: what arrives over wires or in a folder is captured, watched, cut into pulls and advised on, pull by pull, on a thread
 * of its own; the operator's acts go the same way and are captured too, so that a session replays to the identical result. Words are
 * not found here but in {@code report}. Imports the result rooms, {@code intake}, {@code session} and {@code notebook}.
 */
@NullMarked
package org.nextpull.live;

import org.jspecify.annotations.NullMarked;
