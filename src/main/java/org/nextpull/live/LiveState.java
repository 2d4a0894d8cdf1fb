package org.nextpull.live;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.nextpull.advice.Action;
import org.nextpull.advice.Advice;
import org.nextpull.advice.HoldNow;
import org.nextpull.advice.PresentConditions;
import org.nextpull.alarm.Alarm;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.Channel;
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
        List<Alarm.Headroom> headroom,
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
        return result.advice();
    }

    /** What to do now at held speeds; empty where the plan holds none, and when all are done: then the advice says what comes next. */
    public Optional<HoldNow> holding() {
        return hold.filter(now -> !now.isOver());
    }

    /** What is left of the time between pulls, in s, where another pull is wanted. */
    public OptionalDouble waitBeforeNextS() {
        return holding().isPresent()
                        || advice().filter(advice -> advice.action() != Action.STOP)
                                .isPresent()
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

    /**
     * How the capture is doing.
     *
     * @param folder where it is written
     * @param bytes bytes that arrived in this session
     * @param failing why it is not written at the moment; empty while all is well
     * @param since since when it is as it is
     */
    public record CaptureState(Path folder, long bytes, Optional<Finding> failing, ArrivalTime since) {}

    /**
     * The latest value of a channel.
     *
     * @param channel the channel
     * @param value in the project's unit of its role
     * @param ageS seconds since it arrived
     */
    public record LatestValue(Channel channel, double value, double ageS) {}

    /**
     * How a source is doing.
     *
     * @param source its name: the port or the folder
     * @param link whether it can be read
     * @param sinceLastS seconds since something came, in s; empty when nothing has
     * @param finding what is wrong with it at the moment
     */
    public record LinkState(String source, Link link, OptionalDouble sinceLastS, Optional<Finding> finding) {
        /** Whether a source can be read. */
        public enum Link {
            /** It has not been reached yet. */
            WAITING,
            CONNECTED,
            /** It is connected, but nothing comes. */
            SILENT,
            /** It went away. */
            LOST
        }
    }

    /**
     * Something that was said while the session ran.
     *
     * @param at when
     * @param finding what
     */
    public record Notice(ArrivalTime at, Finding finding) {}

    /**
     * The pull that is in progress, as far as it has come; as measured, before any correction.
     *
     * @param course speed and torque as they came, some ten a second; empty where no torque is logged
     * @param knockEvents knock events counted since the load came on; empty where no channel counts them
     */
    public record PullSoFar(List<At> course, OptionalLong knockEvents) {
        public PullSoFar {
            course = List.copyOf(course);
        }

        static PullSoFar none() {
            return new PullSoFar(List.of(), OptionalLong.empty());
        }

        /**
         * One moment of it.
         *
         * @param rpm engine speed in rpm
         * @param torqueNm logged torque in N.m
         */
        public record At(double rpm, double torqueNm) {}
    }
}
