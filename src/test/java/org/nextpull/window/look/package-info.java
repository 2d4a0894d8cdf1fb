/** Tests of how the window looks. */
@NullMarked
package org.nextpull.window.look;

import org.jspecify.annotations.NullMarked;
