/**
 * The notebook: sessions, pulls, advice and what the operator did, kept in one SQLite file, with the samples that every figure can be made
 * from again; and what earlier sessions teach. Imports the rooms {@code unit} to {@code advice} and {@code session}.
 */
@NullMarked
package org.nextpull.notebook;

import org.jspecify.annotations.NullMarked;
