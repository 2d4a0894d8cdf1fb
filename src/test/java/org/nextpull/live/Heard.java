package org.nextpull.live;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.function.Predicate;
import org.nextpull.Await;
import org.nextpull.alarm.Alarm;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.intake.wire.ArrivalTime;
import org.nextpull.response.MeasuredPull;

/** Hears what a session tells. */
final class Heard implements LiveSession.Listener {
    final BlockingQueue<MeasuredPull> ended = new LinkedBlockingQueue<>();
    final BlockingQueue<Alarm.Event> alarms = new LinkedBlockingQueue<>();
    final List<Finding> said = new CopyOnWriteArrayList<>();

    @Override
    public void pullEnded(LiveState state, MeasuredPull.Curve pull) {
        ended.add(pull.pull());
    }

    @Override
    public void alarm(Alarm.Event event, LiveState state) {
        alarms.add(event);
    }

    @Override
    public void said(ArrivalTime at, Finding finding) {
        said.add(finding);
    }

    boolean heard(FindingCode code) {
        return said.stream().anyMatch(finding -> finding.code() == code);
    }

    /** Waits until a session is so. */
    static void await(LiveSession session, Predicate<LiveState> so) {
        if (!Await.comes(Duration.ofMinutes(5), () -> so.test(session.state()))) {
            throw new AssertionError("it did not become so within five minutes: " + session.state());
        }
    }
}
