package org.nextpull.cli;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.advice.Advice;
import org.nextpull.advice.HoldNow;
import org.nextpull.alarm.Alarm;
import org.nextpull.finding.Finding;
import org.nextpull.intake.wire.ArrivalTime;
import org.nextpull.live.LiveSession;
import org.nextpull.live.LiveState;
import org.nextpull.report.json.LiveJson;
import org.nextpull.response.MeasuredPull;

/** A running session for programs, an object a line, beside the talk with people. */
final class LiveLines implements LiveSession.Listener {
    private final AsyncPrinter out;
    private final LiveSession.Listener talk;
    private final LiveJson json = new LiveJson();
    private Optional<Advice> said = Optional.empty();
    private Optional<HoldNow> hold = Optional.empty();
    private OptionalDouble coolDownLeftS = OptionalDouble.empty();

    LiveLines(AsyncPrinter out, LiveSession.Listener talk) {
        this.out = out;
        this.talk = talk;
    }

    @Override
    public void alarm(Alarm.Event event, LiveState state) {
        line(json.alarm(at(state.at()), event));
        talk.alarm(event, state);
    }

    @Override
    public void said(ArrivalTime at, Finding finding) {
        line(json.finding(at(at), finding));
        talk.said(at, finding);
    }

    @Override
    public void pullEnded(LiveState state, MeasuredPull.Curve pull) {
        line(json.pull(at(state.at()), state.result(), pull.pull()));
        said = state.advice();
        talk.pullEnded(state, pull);
    }

    @Override
    public void changed(LiveState state) {
        if (!state.advice().equals(said)) {
            said = state.advice();
            line(json.next(at(state.at()), state.result()));
        }
        Optional<HoldNow> now = state.hold().map(LiveLines::inWholeSeconds);
        OptionalDouble cooling = now.isPresent() ? wholeSeconds(state.coolDownLeftS()) : OptionalDouble.empty();
        if (!Objects.equals(now, hold) || !cooling.equals(coolDownLeftS)) {
            now.ifPresent(each -> line(json.hold(at(state.at()), each, cooling)));
        }
        hold = now;
        coolDownLeftS = cooling;
        talk.changed(state);
    }

    private static HoldNow inWholeSeconds(HoldNow now) {
        return now.withLeftS(wholeSeconds(now.leftS()));
    }

    private static OptionalDouble wholeSeconds(OptionalDouble seconds) {
        return seconds.isPresent() ? OptionalDouble.of(Math.floor(seconds.getAsDouble())) : seconds;
    }

    private static Instant at(ArrivalTime time) {
        return Instant.ofEpochMilli(time.wallMs());
    }

    private void line(String line) {
        out.lines(List.of(line));
    }
}
