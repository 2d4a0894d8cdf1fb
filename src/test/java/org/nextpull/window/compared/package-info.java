/** The page of comparisons, its words and the page itself. */
@NullMarked
package org.nextpull.window.compared;

import org.jspecify.annotations.NullMarked;
