/** The page that starts a session: its form, its probe of sources, the page itself. */
@NullMarked
package org.nextpull.window.start;

import org.jspecify.annotations.NullMarked;
