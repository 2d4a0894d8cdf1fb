/**
 * What arrives while an engine runs: runs of bytes with the time of their arrival, lines framed from them, their values, what is wrong
 * with a wire, and one row of samples made from several wires. Everything here is a pure function of what arrived and when, so a
 * capture replays to the identical rows; no port and no file is in sight, and the only thread-safe class is the queue. Imports {@code
 * unit}, {@code finding}, {@code channel}, {@code plan} and {@code intake}.
 */
@NullMarked
package org.nextpull.intake.wire;

import org.jspecify.annotations.NullMarked;
