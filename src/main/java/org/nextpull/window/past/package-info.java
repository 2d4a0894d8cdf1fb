/**
 * The page of past sessions: the notebook listed and searched, a session shown with its answer, opened on the bench, exported, backed
 * up. Imports {@code notebook}, {@code report}, {@code chart} and the rooms below them, and of the window {@code look}, {@code page}
 * and {@code day}.
 */
@NullMarked
package org.nextpull.window.past;

import org.jspecify.annotations.NullMarked;
