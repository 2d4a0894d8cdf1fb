package org.nextpull.window;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.nextpull.advice.HoldNow;
import org.nextpull.alarm.Alarm;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.intake.wire.ArrivalTime;
import org.nextpull.live.LiveState;
import org.nextpull.plan.Limit;
import org.nextpull.session.DayByPull;
import org.nextpull.session.OperatorActions;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.Temperature;
import org.nextpull.window.day.DaySource;

/** Moments of a running session on a sample day, at which the test says what the channels read. */
public final class LiveMoments {
    private static final DayByPull DAY = DayByPull.of(SampleDays.input("hillclimb-e10-timing"));
    private static final double LIMIT_K = Temperature.ofCelsius(900).kelvins();

    private LiveMoments() {}

    /** Between two pulls, after so many. */
    public static LiveState between(int pulls, double atS) {
        return state(DAY.after(pulls), atS, OptionalDouble.empty(), Map.of(), List.of(), Optional.empty());
    }

    /** Between two pulls, while so many seconds of the plan's cool-down are left. */
    public static LiveState cooling(int pulls, double leftS) {
        LiveState now = between(pulls, 60 * pulls);
        return new LiveState(
                now.at(),
                now.result(),
                now.plan(),
                now.links(),
                now.capture(),
                now.latest(),
                now.sounding(),
                now.headroom(),
                now.pullSinceS(),
                now.pull(),
                now.hold(),
                OptionalDouble.of(leftS),
                now.nextPull(),
                now.acts(),
                now.notices(),
                now.notebookSession(),
                now.notebookFailing());
    }

    /** So many seconds into the next pull, the exhaust at that temperature in degrees Celsius; it sounds beyond 900. */
    public static LiveState pulling(int pulls, double sinceS, double exhaustC) {
        return state(
                DAY.after(pulls),
                60 * pulls + sinceS,
                OptionalDouble.of(sinceS),
                channels(sinceS, exhaustC, 1),
                sounding(exhaustC),
                Optional.empty());
    }

    /** A held speed, at full load or with the throttle closed. */
    public static LiveState holding(HoldNow hold, boolean loaded) {
        OptionalDouble sinceS = loaded ? OptionalDouble.of(4) : OptionalDouble.empty();
        return state(DAY.after(1), 64, sinceS, channels(4, 700, loaded ? 1 : 0.04), List.of(), Optional.of(hold));
    }

    /** The throttle is closed again and the exhaust still as hot as that. */
    public static LiveState closed(int pulls, double atS, double exhaustC) {
        return state(
                DAY.after(pulls),
                atS,
                OptionalDouble.empty(),
                channels(0, exhaustC, 0.04),
                sounding(exhaustC),
                Optional.empty());
    }

    private static Map<Role, Double> channels(double sinceS, double exhaustC, double throttle) {
        return Map.of(
                Role.ENGINE_SPEED, rpm(sinceS),
                Role.TORQUE, torque(rpm(sinceS)),
                Role.LAMBDA, 0.874,
                Role.THROTTLE, throttle,
                Role.EXHAUST_TEMPERATURE, Temperature.ofCelsius(exhaustC).kelvins());
    }

    private static double rpm(double sinceS) {
        return 3000 + 520 * sinceS;
    }

    private static double torque(double rpm) {
        return 186 - 34 * Math.pow((rpm - 5000) / 2000, 2);
    }

    private static List<Alarm> sounding(double exhaustC) {
        double kelvins = Temperature.ofCelsius(exhaustC).kelvins();
        Alarm.RowPlace row = new Alarm.RowPlace(1, OptionalDouble.empty());
        return kelvins > LIMIT_K
                ? List.of(new Alarm(Limit.EXHAUST, Channel.of(Role.EXHAUST_TEMPERATURE), row, row, 1, kelvins, LIMIT_K))
                : List.of();
    }

    private static LiveState state(
            SessionResult result,
            double atS,
            OptionalDouble sinceS,
            Map<Role, Double> channels,
            List<Alarm> sounding,
            Optional<HoldNow> hold) {
        ArrivalTime at = new ArrivalTime((long) (atS * 1e9), 1_790_000_000_000L);
        List<LiveState.LatestValue> latest = new ArrayList<>();
        channels.forEach((role, value) -> latest.add(new LiveState.LatestValue(Channel.of(role), value, 0.05)));
        List<LiveState.PullSoFar.At> course = new ArrayList<>();
        for (double second = 0; second <= sinceS.orElse(-1); second += 0.1) {
            course.add(new LiveState.PullSoFar.At(rpm(second), torque(rpm(second))));
        }
        List<Alarm.Headroom> headroom = new ArrayList<>();
        if (channels.containsKey(Role.EXHAUST_TEMPERATURE)) {
            headroom.add(
                    new Alarm.Headroom(Limit.EXHAUST, channels.getOrDefault(Role.EXHAUST_TEMPERATURE, 0.0), LIMIT_K));
            headroom.add(new Alarm.Headroom(Limit.SPEED, channels.getOrDefault(Role.ENGINE_SPEED, 0.0), 7200));
        }
        return new LiveState(
                at,
                result,
                result.plan(),
                List.of(new LiveState.LinkState(
                        "bench port", LiveState.LinkState.Link.CONNECTED, OptionalDouble.of(0.1), Optional.empty())),
                new LiveState.CaptureState(Path.of("session"), 1_200_000, Optional.empty(), at),
                latest,
                sounding,
                headroom,
                sinceS,
                new LiveState.PullSoFar(course, OptionalLong.of(0)),
                hold,
                OptionalDouble.empty(),
                result.pulls().size() + 1,
                OperatorActions.of(List.of()),
                List.of(),
                OptionalLong.empty(),
                Optional.empty());
    }

    /** As the window gets it. */
    public static DaySource.Moment moment(LiveState state) {
        return new DaySource.Moment("bench port", state.result(), Optional.empty(), Optional.of(state));
    }
}
