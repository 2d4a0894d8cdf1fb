/** Filters over sampled signals: smoothing, slopes, and the lag of one signal behind another. Imports {@code math} only. */
@NullMarked
package org.nextpull.math.smooth;

import org.jspecify.annotations.NullMarked;
