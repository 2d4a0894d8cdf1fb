/** The bench page without a window. */
@NullMarked
package org.nextpull.window.bench;

import org.jspecify.annotations.NullMarked;
