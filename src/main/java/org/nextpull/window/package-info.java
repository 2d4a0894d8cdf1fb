/**
 * The bench window: the one class that opens it, and the frame that holds its pages. Imports every room below, {@code app} for what commands do too, but {@code math} and
 * {@code engine}; {@code look} knows colours and type, {@code work} threads, {@code day} where the day comes from, {@code bench} the
 * page of the running day, {@code page} what all pages share.
 */
@NullMarked
package org.nextpull.window;

import org.jspecify.annotations.NullMarked;
