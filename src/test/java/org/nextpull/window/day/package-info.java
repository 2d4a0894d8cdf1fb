/** Days as sources of a window, without a window. */
@NullMarked
package org.nextpull.window.day;

import org.jspecify.annotations.NullMarked;
