/**
 * Tables as RFC 4180 CSV, for spreadsheets and for reading back. Imports the result rooms and {@code session}.
 */
@NullMarked
package org.nextpull.report.csv;

import org.jspecify.annotations.NullMarked;
