/** The window driven as a user drives it: by its keys, read by its accessible names. */
@NullMarked
package org.nextpull.window;

import org.jspecify.annotations.NullMarked;
