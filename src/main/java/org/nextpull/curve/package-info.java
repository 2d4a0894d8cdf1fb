/**
 * Curves of torque and power over speed: raw as measured, with the inertia that the log leaves out put back, and corrected to
 * standard air. A corrected curve is made from a raw one only, so nothing is corrected twice. Imports {@code unit}, {@code finding},
 * {@code math}, {@code channel}, {@code air}, {@code plan} and {@code pull}.
 */
@NullMarked
package org.nextpull.curve;

import org.jspecify.annotations.NullMarked;
