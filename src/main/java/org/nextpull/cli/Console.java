package org.nextpull.cli;

import java.io.PrintWriter;

/**
 * Where a command prints.
 *
 * @param out results
 * @param err progress and messages
 */
record Console(PrintWriter out, PrintWriter err) {}
