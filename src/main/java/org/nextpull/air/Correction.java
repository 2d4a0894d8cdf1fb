package org.nextpull.air;

import java.util.List;
import org.nextpull.finding.Finding;
import org.nextpull.unit.Finite;

/**
 * The correction of one pull.
 *
 * @param standard the rule
 * @param factor corrected over measured torque, positive
 * @param air the air that it was computed for
 * @param findings what lies outside the standard's range; empty when the factor may be used without a word
 */
public record Correction(CorrectionStandard standard, double factor, AirState air, List<Finding> findings) {
    /**
     * Accepts any positive finite factor, outside the range of the standard too; its findings say so.
     *
     * @throws IllegalArgumentException when the factor is NaN, infinite, 0 or negative
     */
    public Correction {
        findings = List.copyOf(findings);
        Finite.requirePositive("a correction factor", factor);
    }

    /** Whether air and factor lie inside the range of the standard. */
    public boolean isWithinLimits() {
        return findings.isEmpty();
    }
}
