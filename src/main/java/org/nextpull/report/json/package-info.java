/**
 * The JSON documents of the command line, in the units that their keys name. Jackson is seen only here. Imports the rooms that
 * {@code report} may.
 */
@NullMarked
package org.nextpull.report.json;

import org.jspecify.annotations.NullMarked;
