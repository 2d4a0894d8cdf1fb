/**
 * Everything that arrived, on disk: one file for each source of a session, written before anything else is done with the bytes, read
 * back to the identical bytes and times. The file survives being cut at any byte. Imports {@code finding} and {@code intake.wire}.
 */
@NullMarked
package org.nextpull.intake.capture;

import org.jspecify.annotations.NullMarked;
