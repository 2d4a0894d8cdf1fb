/**
 * The library entry: a sweep fitted from bare numbers, a day advised on from a plan and logs, labels compared, and samples of a logger
 * of one's own. Stable, with what its signatures name of other rooms: the records and closed lists of {@code unit}, {@code finding} and
 * {@code channel}, {@code advice.Action}, {@code advice.AdviceCode}, {@code compare.Comparison.Verdict} and {@code
 * compare.Comparison.PercentInterval}. The handbook page "As a library" shows it at work. Imports rooms up to {@code session}, and {@code intake}
 * for the logs.
 */
@NullMarked
package org.nextpull.api;

import org.jspecify.annotations.NullMarked;
