/**
 * The simulated brake and its instruments: how a pull is driven, what the sensors make of it, and the day around it. Every random
 * number comes from one seed. Imports {@code engine}, {@code engine.gas}, {@code channel}, {@code air}, {@code math}, {@code unit} and
 * {@code finding}.
 */
@NullMarked
package org.nextpull.engine.bench;

import org.jspecify.annotations.NullMarked;
