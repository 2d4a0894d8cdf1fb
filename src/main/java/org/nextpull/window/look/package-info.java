/** Colours, type and lines of the window: from the palette of the charts, light or dark, sized by the window. Imports {@code chart} and {@code unit}. */
@NullMarked
package org.nextpull.window.look;

import org.jspecify.annotations.NullMarked;
