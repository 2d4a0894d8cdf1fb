/**
 * What a log holds: channel roles, blocks and recordings of samples in the project's units, hints on how to read columns, asked
 * settings and tables of results as rows. Imports {@code unit} and {@code finding}.
 */
@NullMarked
package org.nextpull.channel;

import org.jspecify.annotations.NullMarked;
