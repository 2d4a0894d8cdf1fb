/** Threads of the window: nothing but showing happens on the event thread. Imports no room. */
@NullMarked
package org.nextpull.window.work;

import org.jspecify.annotations.NullMarked;
