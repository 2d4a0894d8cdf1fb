/** What the command line prints for people. Imports the rooms that {@code report} may. */
@NullMarked
package org.nextpull.report.text;

import org.jspecify.annotations.NullMarked;
