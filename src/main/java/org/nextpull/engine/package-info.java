/**
 * The model engine: an invented engine described by its parts, and its torque, exhaust temperature and knock at any speed, spark
 * advance, mixture, fuel and weather, from combustion physics. Imports {@code engine.cycle}, {@code engine.gas}, {@code air},
 * {@code unit} and {@code finding}.
 */
@NullMarked
package org.nextpull.engine;

import org.jspecify.annotations.NullMarked;
