/**
 * Finds pulls in a stream of sample blocks: gates full load, cuts the stretches into sweeps, steps and holds, trims run-in and
 * shut-off, lines lambda up in time and says why a candidate cannot be used. Knows no air. Imports {@code unit}, {@code finding},
 * {@code math}, {@code channel} and {@code plan}.
 */
@NullMarked
package org.nextpull.pull;

import org.jspecify.annotations.NullMarked;
