/**
 * Where the day that a window shows comes from, without Swing types: a day gone through again, or a running session. Imports
 * {@code session} and the result rooms, {@code live} and {@code report}.
 */
@NullMarked
package org.nextpull.window.day;

import org.jspecify.annotations.NullMarked;
