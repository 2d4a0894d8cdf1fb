/**
 * The page that starts a session: a plan written by a form, a port or a folder chosen, and values seen to arrive before anything is
 * recorded. Imports {@code plan}, {@code intake}, {@code live}, {@code report} and the rooms below them, and of the window {@code look},
 * {@code page} and {@code day}.
 */
@NullMarked
package org.nextpull.window.start;

import org.jspecify.annotations.NullMarked;
