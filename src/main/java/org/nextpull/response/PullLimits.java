package org.nextpull.response;

import java.util.List;
import org.nextpull.finding.Finding;
import org.nextpull.finding.Place;
import org.nextpull.plan.SweepPlan;
import org.nextpull.pull.Candidate;

/**
 * The limits that a pull met.
 *
 * @param met worst of each limit
 * @param findings what is worth saying, such as an exhaust still heating at the end
 */
record PullLimits(List<LimitMet> met, List<Finding> findings) {
    PullLimits {
        met = List.copyOf(met);
        findings = List.copyOf(findings);
    }

    static PullLimits of(Candidate candidate, SweepPlan plan, Place place) {
        return new PullLimits(List.of(), List.of());
    }
}
