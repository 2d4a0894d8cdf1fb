/** Smoothing of values in a row. Imports {@code math} only. */
@NullMarked
package org.nextpull.math.smooth;

import org.jspecify.annotations.NullMarked;
