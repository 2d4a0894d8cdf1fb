/** One page of the window driven by itself. */
@NullMarked
package org.nextpull.window.page;

import org.jspecify.annotations.NullMarked;
