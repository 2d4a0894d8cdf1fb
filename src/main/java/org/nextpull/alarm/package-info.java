/**
 * The plan's limits against samples, row by row: the same watch sounds live and says of an old log what would have sounded. It advises
 * and protects nothing. Imports {@code unit}, {@code finding}, {@code channel}, {@code plan} and {@code pull}.
 */
@NullMarked
package org.nextpull.alarm;

import org.jspecify.annotations.NullMarked;
