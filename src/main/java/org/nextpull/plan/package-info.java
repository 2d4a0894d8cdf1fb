/**
 * The sweep plan: what the operator says about engine, fuel, dyno, band, sweep and limits, as immutable records in the project's
 * units. Reading and writing its text is in {@code plan.text}. It stands
 * below all rooms that ask it for something, so each of its words is one type. Imports {@code unit}, {@code finding}, {@code channel}, {@code air} and
 * {@code fuel}.
 */
@NullMarked
package org.nextpull.plan;

import org.jspecify.annotations.NullMarked;
