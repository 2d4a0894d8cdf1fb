/**
 * Files that another program writes into a folder: found by looking again and again, since a network share tells nobody of changes;
 * followed while they grow, taken once when they are complete. Imports {@code finding} and {@code intake.wire}.
 */
@NullMarked
package org.nextpull.intake.folder;

import org.jspecify.annotations.NullMarked;
