/**
 * The sheet: one HTML file that holds all it shows. Its template lies beside the classes, and JMustache is seen only here. Imports
 * the rooms that {@code report} may.
 */
@NullMarked
package org.nextpull.report.html;

import org.jspecify.annotations.NullMarked;
