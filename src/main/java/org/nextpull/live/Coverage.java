package org.nextpull.live;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.nextpull.alarm.AlarmCover;
import org.nextpull.alarm.AlarmRules;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.plan.SweepPlan;
import org.nextpull.response.PullMeasure;

/** Says, once it is known what the sources send, what the plan needs and none of them sends: before the first pull, not after it. */
final class Coverage {
    /** Other columns, or other kinds of lines, may be understood a little later than the first. */
    private static final double SETTLE_S = 3;

    private OptionalDouble sinceS = OptionalDouble.empty();
    private boolean said;

    /** Whether it was said, or there was nothing to say. */
    boolean isSaid() {
        return said;
    }

    /**
     * What is to be said now; nothing while it is not known, or when it was said.
     *
     * @param sources how the sources are called
     * @param channels what they send, as far as it is understood
     * @param complete whether something of each source is understood
     */
    List<Finding> due(SweepPlan plan, String sources, List<Channel> channels, boolean complete, double nowS) {
        if (said || !complete) {
            return List.of();
        }
        if (sinceS.isEmpty()) {
            sinceS = OptionalDouble.of(nowS);
        }
        if (nowS - sinceS.getAsDouble() < SETTLE_S) {
            return List.of();
        }
        said = true;
        Place place = Place.inFile(sources);
        Set<Role> logged = channels.stream().map(Channel::role).collect(Collectors.toSet());
        List<Finding> findings = new ArrayList<>(AlarmCover.check(AlarmRules.of(plan), channels, place));
        for (String reading : new PullMeasure(plan).airLacking(logged)) {
            findings.add(Finding.warning(FindingCode.LIVE_AIR_MISSING, place, Detail.of("reading", reading)));
        }
        return findings;
    }
}
