/**
 * nextpull: from a dyno log to the best spark timing and mixture. Each package below is a room; the table of rooms says which may
 * import which, and {@code RoomsTest} holds it.
 */
@NullMarked
package org.nextpull;

import org.jspecify.annotations.NullMarked;
