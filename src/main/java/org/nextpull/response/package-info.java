/**
 * Joins what was asked with what was measured: each pull becomes its band averages, rows, peaks, knock, limits met and conditions.
 * Imports {@code unit}, {@code finding}, {@code math}, {@code channel}, {@code air}, {@code fuel}, {@code plan}, {@code pull},
 * {@code curve} and {@code alarm}.
 */
@NullMarked
package org.nextpull.response;

import org.jspecify.annotations.NullMarked;
