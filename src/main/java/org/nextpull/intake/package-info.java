/**
 * Where bytes come from and what they mean: byte sources found from names, gzip and zip unpacked by content, character sets, number
 * and time texts, header spellings, units, and rows of fields gathered into blocks of samples. Every source of rows, whether a file
 * or a wire, goes through the same classes here. Imports {@code unit}, {@code finding}, {@code channel}, {@code fuel} and
 * {@code plan}.
 */
@NullMarked
package org.nextpull.intake;

import org.jspecify.annotations.NullMarked;
