/**
 * Repeatability, drift and outliers of responses, for fitting and comparing alike. Imports {@code unit}, {@code finding},
 * {@code math}, {@code channel} and {@code response}.
 */
@NullMarked
package org.nextpull.scatter;

import org.jspecify.annotations.NullMarked;
