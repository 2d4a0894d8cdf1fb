/**
 * Quantities, the unit symbols that loggers write, conversion to and from SI, and one scalar record for each number that is easily
 * swapped with another. Imports nothing of the project.
 */
@NullMarked
package org.nextpull.unit;

import org.jspecify.annotations.NullMarked;
