/** Handing over between threads. */
@NullMarked
package org.nextpull.window.work;

import org.jspecify.annotations.NullMarked;
