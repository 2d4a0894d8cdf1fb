/**
 * Fuels: composition to stoichiometry and energy, blends with the source of every figure, lambda and air-fuel ratio on any scale, the
 * flow that one fuel needs against another, what to beware of. Imports {@code unit} and {@code finding}.
 */
@NullMarked
package org.nextpull.fuel;

import org.jspecify.annotations.NullMarked;
