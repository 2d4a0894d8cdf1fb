package org.nextpull.advice;

import java.util.List;
import org.nextpull.finding.Finding;
import org.nextpull.fit.Belief;

/**
 * Where one sweep stands.
 *
 * @param answer what it says
 * @param peak mean and standard deviation of its peak, which an informed check starts from
 * @param evidence the numbers that decide
 * @param next what its planner does next
 * @param findings what is worth saying of the fit
 */
public record SweepState(SweepAnswer answer, Belief peak, Evidence evidence, SweepStep next, List<Finding> findings) {
    public SweepState {
        findings = List.copyOf(findings);
    }

    /** The same with another next step and the evidence for it. */
    SweepState withNext(SweepStep newNext, Evidence newEvidence) {
        return new SweepState(answer, peak, newEvidence, newNext, findings);
    }

    public boolean isEnded() {
        return next instanceof SweepStep.End;
    }

    public Factor factor() {
        return answer.factor();
    }
}
