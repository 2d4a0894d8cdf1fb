package org.nextpull.pull;

import org.nextpull.finding.Finding;

/**
 * A candidate that cannot be used.
 *
 * @param reason why
 * @param finding the same for a reader, with the numbers
 */
public record Refusal(RefusalReason reason, Finding finding) {}
