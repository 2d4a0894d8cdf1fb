package org.nextpull.live;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.nextpull.advice.Action;
import org.nextpull.advice.Advice;
import org.nextpull.advice.HoldNow;
import org.nextpull.advice.PresentConditions;
import org.nextpull.advice.Verdict;
import org.nextpull.alarm.Alarm;
import org.nextpull.alarm.Headroom;
import org.nextpull.channel.AskedSetting;
import org.nextpull.finding.Finding;
import org.nextpull.intake.wire.ArrivalTime;
import org.nextpull.plan.SweepPlan;
import org.nextpull.session.OperatorActions;
import org.nextpull.session.SessionResult;

/**
 * A running session as it stands at one moment.
 *
 * @param at the moment
 * @param result the day so far
 * @param plan the plan with the limits as they now stand
 * @param links the sources
 * @param capture the capture
 * @param latest latest value of each channel that was seen
 * @param sounding alarms that sound now
 * @param headroom how near each limit is that holds now
 * @param pullSinceS seconds since the engine went to full load, in s; empty when no pull is in progress
 * @param pull the pull in progress as far as it has come; nothing is in it when there is none
 * @param hold what to do now where a plan holds speeds and steps the spark at them; empty where it does not
 * @param coolDownLeftS seconds until the plan's least time between pulls is over, in s; empty when it is, or when there is none
 * @param nextPull number of the pull that is in progress or comes next
 * @param acts what the operator did so far
 * @param notices what was said, the latest last; the oldest are given up
 * @param notebookSession id of the session in the notebook; empty when it is kept in none
 * @param notebookFailing why nothing is kept in the notebook at the moment
 */
public record LiveState(
        ArrivalTime at,
        SessionResult result,
        SweepPlan plan,
        List<LinkState> links,
        CaptureState capture,
        List<LatestValue> latest,
        List<Alarm> sounding,
        List<Headroom> headroom,
        OptionalDouble pullSinceS,
        PullSoFar pull,
        Optional<HoldNow> hold,
        OptionalDouble coolDownLeftS,
        int nextPull,
        OperatorActions acts,
        List<Notice> notices,
        OptionalLong notebookSession,
        Optional<Finding> notebookFailing) {
    public LiveState {
        links = List.copyOf(links);
        latest = List.copyOf(latest);
        sounding = List.copyOf(sounding);
        headroom = List.copyOf(headroom);
        notices = List.copyOf(notices);
    }

    /** The next step as it now stands; empty when the plan sweeps nothing. */
    public Optional<Advice> advice() {
        return result.verdict().map(Verdict::advice);
    }

    /** What is left of the time between pulls, in s, where another pull is wanted. */
    public OptionalDouble waitBeforeNextS() {
        return advice().filter(advice -> advice.action() != Action.STOP).isPresent()
                ? coolDownLeftS
                : OptionalDouble.empty();
    }

    /** What is not kept at the moment, and why; stays as long as it is so. */
    public List<Finding> failing() {
        return Stream.of(capture.failing(), notebookFailing)
                .flatMap(Optional::stream)
                .toList();
    }

    /** The temperatures of the moment, as far as they are known. */
    public PresentConditions conditions() {
        return LatestValues.conditions(latest);
    }

    /** What was said to be set for the pull that is in progress or comes next. */
    public Optional<AskedSetting> nextSetting() {
        return acts.settingOf(nextPull);
    }
}
