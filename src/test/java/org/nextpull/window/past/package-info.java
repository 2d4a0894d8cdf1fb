/** The page of past sessions, its words and the page itself. */
@NullMarked
package org.nextpull.window.past;

import org.jspecify.annotations.NullMarked;
