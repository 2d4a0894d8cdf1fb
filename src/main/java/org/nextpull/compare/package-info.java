/**
 * Whether one configuration beats another by more than the scatter: differences with intervals, drift removed, verdicts, further
 * pulls needed, groups, bands over speed, and how many pulls to plan. Imports {@code unit}, {@code finding}, {@code math},
 * {@code channel}, {@code air}, {@code plan}, {@code curve}, {@code response} and {@code scatter}.
 */
@NullMarked
package org.nextpull.compare;

import org.jspecify.annotations.NullMarked;
