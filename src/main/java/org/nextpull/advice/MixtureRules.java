package org.nextpull.advice;

import org.nextpull.unit.Lambda;

/**
 * How far a plan lets the mixture go.
 *
 * @param richest least lambda
 * @param leanest greatest lambda
 * @param largestStep largest step toward lean beyond the leanest clean pull, in lambda
 * @param resolution smallest step that can be set, in lambda
 */
public record MixtureRules(Lambda richest, Lambda leanest, double largestStep, double resolution) {
    public MixtureRules {
        if (richest.value() > leanest.value() || !(largestStep > 0) || !(resolution > 0)) {
            throw new IllegalArgumentException("mixture from " + richest + " to " + leanest + " by " + largestStep);
        }
    }
}
