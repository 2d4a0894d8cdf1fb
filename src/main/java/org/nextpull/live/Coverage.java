package org.nextpull.live;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.nextpull.alarm.AlarmCover;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.intake.wire.WireChain;
import org.nextpull.plan.SweepPlan;
import org.nextpull.response.PullMeasure;

/** Says, once it is known what the sources send, what the plan needs and none of them sends: before the first pull, not after it. */
final class Coverage {
    /** Other columns, or other kinds of lines, may be understood a little later than the first. */
    private static final double SETTLE_S = 3;

    private final DayIntake intake;
    private final WireChain chain;
    private OptionalDouble sinceS = OptionalDouble.empty();
    private boolean said;

    Coverage(DayIntake intake, WireChain chain) {
        this.intake = intake;
        this.chain = chain;
    }

    /** What is to be said now; nothing while it is not known, or when it was said. */
    List<Finding> due(SweepPlan plan, double nowS) {
        if (said || !intake.isUnderstood(chain)) {
            return List.of();
        }
        if (sinceS.isEmpty()) {
            sinceS = OptionalDouble.of(nowS);
        }
        if (nowS - sinceS.getAsDouble() < SETTLE_S) {
            return List.of();
        }
        said = true;
        Place place = Place.inFile(intake.title());
        List<Channel> channels = intake.columns(chain).stream()
                .flatMap(column -> column.channel().stream())
                .toList();
        Set<Role> logged = channels.stream().map(Channel::role).collect(Collectors.toSet());
        List<Finding> findings = new ArrayList<>(AlarmCover.check(plan, channels, place));
        for (String reading : new PullMeasure(plan).airLacking(logged)) {
            findings.add(Finding.warning(FindingCode.LIVE_AIR_MISSING, place, Detail.of("reading", reading)));
        }
        return findings;
    }
}
