/**
 * The page that compares sessions and logs: the verdict in words, mean curves and differences with their bands, and the numbers. Imports
 * {@code session}, {@code intake}, {@code compare}, {@code report}, {@code chart} and the rooms below them, and of the window
 * {@code look}, {@code page}, {@code past} and {@code start}.
 */
@NullMarked
package org.nextpull.window.compared;

import org.jspecify.annotations.NullMarked;
