/**
 * Words, rounding and tables: text, JSON, CSV and HTML, and every sentence that a user reads about a finding or an advice. No
 * arithmetic beyond rounding and units. Imports the result rooms, {@code chart}, {@code notebook} and {@code session}.
 */
@NullMarked
package org.nextpull.report;

import org.jspecify.annotations.NullMarked;
