/**
 * What command line and window both do: read a day and its plan, write its sheet with the files beside it, reach the notebook, find what a
 * session reads from. Nothing here prints, asks or shows. May import everything below it but {@code math} and {@code engine}; {@code window}
 * and {@code cli} import it.
 */
@NullMarked
package org.nextpull.app;

import org.jspecify.annotations.NullMarked;
