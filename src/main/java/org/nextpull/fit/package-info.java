/**
 * The response against one swept factor: where it peaks, the least setting that is as good as the peak, and what one more pull
 * would teach; for the band, for each row of the speed band. Everything quoted is read off one
 * posterior on a grid; nothing here draws random numbers. Settings are degrees for timing and hundredths of lambda for mixture.
 * Imports unit, finding, math, channel, response and scatter.
 */
@NullMarked
package org.nextpull.fit;

import org.jspecify.annotations.NullMarked;
