/**
 * The text of a sweep plan: the list of all keys, reading the text with every error and its place, changing it in place,
 * writing it. The only package that sees the TOML parser. Imports {@code plan}, {@code unit}, {@code finding}, {@code channel}, {@code air}
 * and {@code fuel}.
 */
@NullMarked
package org.nextpull.plan.text;

import org.jspecify.annotations.NullMarked;
