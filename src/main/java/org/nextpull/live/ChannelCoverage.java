package org.nextpull.live;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.nextpull.alarm.AlarmWatch;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.intake.wire.WireChain;
import org.nextpull.plan.SweepPlan;
import org.nextpull.response.PullMeasure;

/**
 * Says, once it is known what the sources send, what the plan needs and none of them sends: before the first pull, not after it; and in a
 * pull, which channel that guards a limit has fallen silent.
 */
final class ChannelCoverage {
    /** Other columns, or other kinds of lines, may be understood a little later than the first. */
    private static final double SETTLE_S = 3;

    /** A channel that read before and is silent for so long under load is dead; slow loggers send temperatures once a second or two. */
    private static final double SILENT_S = 3;

    private final DayIntake intake;
    private final WireChain chain;
    private OptionalDouble sinceS = OptionalDouble.empty();
    private boolean said;
    private final Set<Channel> silent = new HashSet<>();

    ChannelCoverage(DayIntake intake, WireChain chain) {
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
        List<Finding> findings = new ArrayList<>(AlarmWatch.unwatched(plan, channels, place));
        for (String reading : new PullMeasure(plan).airLacking(logged)) {
            findings.add(Finding.warning(FindingCode.LIVE_AIR_MISSING, place, Detail.of("reading", reading)));
        }
        return findings;
    }

    /** The channels that guard a limit and have fallen silent under load while others go on; each is said once a pull. */
    List<Finding> silent(SweepPlan plan, List<LiveState.LatestValue> latest, boolean underLoad) {
        if (!underLoad) {
            silent.clear();
            return List.of();
        }
        boolean othersGoOn = latest.stream().anyMatch(value -> value.ageS() < 1);
        Set<Role> guards = plan.watched().stream().map(limit -> limit.role()).collect(Collectors.toSet());
        return latest.stream()
                .filter(value -> othersGoOn && value.ageS() >= SILENT_S)
                .filter(value -> guards.contains(value.channel().role()) && silent.add(value.channel()))
                .map(value -> Finding.warning(
                        FindingCode.LIVE_CHANNEL_SILENT,
                        Place.inFile(intake.title()),
                        Detail.of("channel", value.channel().id()),
                        Detail.of("seconds", value.ageS())))
                .toList();
    }
}
