/** The command line: one thin class a command, exit codes and {@link org.nextpull.cli.Main}. */
@NullMarked
package org.nextpull.cli;

import org.jspecify.annotations.NullMarked;
