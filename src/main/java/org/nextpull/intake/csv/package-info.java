/**
 * Separated text files: logs, tables of results and settings files. The only package that sees the CSV library. Imports {@code
 * unit}, {@code finding}, {@code channel} and {@code intake}.
 */
@NullMarked
package org.nextpull.intake.csv;

import org.jspecify.annotations.NullMarked;
