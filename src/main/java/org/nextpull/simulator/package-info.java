/**
 * The model engine as a source of logs and as an engine to practise on: dialects of log text, truth beside it, the engine that a
 * plan describes, the same engine on serial ports, and a practice session without a terminal. Imports {@code engine},
 * {@code intake}, {@code session}, {@code plan}, {@code channel}, {@code unit}, {@code finding}, {@code fit} and {@code advice}.
 */
@NullMarked
package org.nextpull.simulator;

import org.jspecify.annotations.NullMarked;
