package org.nextpull.window.bench;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.nextpull.alarm.Alarm;
import org.nextpull.alarm.Counsel;
import org.nextpull.channel.Role;
import org.nextpull.live.LiveState;
import org.nextpull.plan.Limit;
import org.nextpull.report.AlarmText;
import org.nextpull.report.HoldText;
import org.nextpull.report.Shown;
import org.nextpull.window.page.Signals;

/**
 * From the moments of a running session, what its alarms put over the page: the act until the throttle is closed, then what to do next
 * until that was read or another pull runs. Looks at each moment in turn; not for use by several threads.
 */
final class ThrottleWatch {
    /** A throttle below this share of the plan's full load is off the load: an engine held ready is not at idle (common practice, no source). */
    private static final double CLOSED = 0.5;

    /** A throttle that was not read for so long is not known. */
    private static final double STALE_S = 1;

    /** Without a throttle channel an alarm is seen and heard for so long at least. */
    private static final double LEAST_S = 2;

    private final Map<Limit, Alarm> met = new EnumMap<>(Limit.class);
    /** Why a held speed had to end. */
    private Optional<String> held = Optional.empty();

    private Signals.AlarmSign sign = Signals.AlarmSign.none();
    private double soundedAtS;

    /** What is to be over the page at this moment, in those units. */
    Signals.AlarmSign at(LiveState state, Shown shown) {
        boolean anew = false;
        for (Alarm alarm : state.sounding()) {
            anew |= met.put(alarm.limit(), alarm) == null;
        }
        Optional<String> ended = state.hold().flatMap(HoldText::ended);
        anew |= ended.isPresent() && !ended.equals(held);
        held = ended.or(() -> held);
        boolean isClosed = isClosed(state);
        if (anew || (!state.sounding().isEmpty() && !isClosed && sign.phase() != Signals.AlarmSign.Phase.ACT)) {
            soundedAtS = state.at().seconds();
            sign = sign(Signals.AlarmSign.Phase.ACT, shown);
        } else if (sign.phase() == Signals.AlarmSign.Phase.ACT) {
            sign = sign(isClosed ? Signals.AlarmSign.Phase.AFTERWARDS : Signals.AlarmSign.Phase.ACT, shown);
        } else if (sign.phase() == Signals.AlarmSign.Phase.AFTERWARDS
                && state.sounding().isEmpty()
                && state.pullSinceS().isPresent()) {
            sign = Signals.AlarmSign.none();
        }
        if (sign.phase() != Signals.AlarmSign.Phase.ACT && state.sounding().isEmpty()) {
            met.clear();
            held = Optional.empty();
        }
        return sign;
    }

    private Signals.AlarmSign sign(Signals.AlarmSign.Phase phase, Shown shown) {
        AlarmText words = new AlarmText(shown);
        boolean off = met.values().stream().anyMatch(alarm -> alarm.counsel() == Counsel.LIFT_AND_SWITCH_OFF);
        Counsel worst = off ? Counsel.LIFT_AND_SWITCH_OFF : Counsel.LIFT;
        return new Signals.AlarmSign(
                phase,
                AlarmText.act(worst),
                lines(words::reason, held),
                lines(alarm -> AlarmText.afterwards(alarm.counsel()), held.map(why -> HoldText.COOL)));
    }

    private String lines(Function<Alarm, String> sentence, Optional<String> ofHold) {
        return Stream.concat(met.values().stream().map(sentence), ofHold.stream())
                .distinct()
                .collect(Collectors.joining("\n"));
    }

    private boolean isClosed(LiveState state) {
        if (state.pullSinceS().isPresent()) {
            return false;
        }
        OptionalDouble throttle = state.latest().stream()
                .filter(value -> value.channel().role() == Role.THROTTLE && value.ageS() <= STALE_S)
                .mapToDouble(LiveState.LatestValue::value)
                .findFirst();
        if (throttle.isPresent()) {
            return throttle.getAsDouble() < CLOSED * state.plan().pull().fullLoad();
        }
        boolean races = state.sounding().stream().anyMatch(alarm -> alarm.limit() == Limit.SPEED);
        return !races && state.at().seconds() - soundedAtS >= LEAST_S;
    }
}
