/**
 * What the command line prints for people, and tables as RFC 4180 CSV, for spreadsheets and for reading back. Imports the rooms that
 * {@code report} may.
 */
@NullMarked
package org.nextpull.report.text;

import org.jspecify.annotations.NullMarked;
