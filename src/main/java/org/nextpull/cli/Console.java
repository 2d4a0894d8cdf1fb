package org.nextpull.cli;

import java.io.BufferedReader;
import java.io.PrintWriter;

/**
 * Where a command prints and reads.
 *
 * @param out results
 * @param err progress and messages
 * @param in what the user types
 */
record Console(PrintWriter out, PrintWriter err, BufferedReader in) {}
