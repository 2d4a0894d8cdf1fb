/**
 * Gases and fuels of the model engine: temperature-dependent heat capacities, the products of combustion, and what the cycle needs
 * to know of a fuel. Imports {@code fuel}, {@code unit} and {@code finding}.
 */
@NullMarked
package org.nextpull.engine.gas;

import org.jspecify.annotations.NullMarked;
