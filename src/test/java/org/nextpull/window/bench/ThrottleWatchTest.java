package org.nextpull.window.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.nextpull.advice.HoldNow;
import org.nextpull.live.LiveState;
import org.nextpull.report.Shown;
import org.nextpull.unit.UnitSystem;
import org.nextpull.window.LiveMoments;
import org.nextpull.window.page.Signals;

class ThrottleWatchTest {
    private static final Shown METRIC = new Shown(UnitSystem.METRIC);

    private final ThrottleWatch watch = new ThrottleWatch();

    private Signals.AlarmSign at(LiveState state) {
        return watch.at(state, METRIC);
    }

    @Test
    void anAlarmStaysUntilTheThrottleIsClosedAndThenSaysWhatToDo() {
        assertThat(at(LiveMoments.pulling(3, 4, 880)).phase()).isEqualTo(Signals.AlarmSign.Phase.NONE);
        Signals.AlarmSign act = at(LiveMoments.pulling(3, 4.1, 905));
        assertThat(act.phase()).isEqualTo(Signals.AlarmSign.Phase.ACT);
        assertThat(act.act()).isEqualTo("CLOSE THROTTLE");
        assertThat(act.reason()).isEqualTo("Exhaust temperature 905 °C, limit 900 °C.");
        assertThat(at(LiveMoments.pulling(3, 4.4, 895)).phase())
                .as("within the limit again, the throttle still open")
                .isEqualTo(Signals.AlarmSign.Phase.ACT);
        Signals.AlarmSign after = at(LiveMoments.closed(3, 186, 880));
        assertThat(after.phase()).isEqualTo(Signals.AlarmSign.Phase.AFTERWARDS);
        assertThat(after.afterwards()).startsWith("Let it cool.");
        assertThat(at(LiveMoments.between(3, 200))).isEqualTo(after);
        assertThat(at(LiveMoments.pulling(4, 1, 700)).phase())
                .as("the next pull runs")
                .isEqualTo(Signals.AlarmSign.Phase.NONE);
    }

    @Test
    void throttleOpenedAgainWhileTheLimitIsPassedSoundsAgain() {
        at(LiveMoments.pulling(3, 4, 905));
        assertThat(at(LiveMoments.closed(3, 186, 903)).phase()).isEqualTo(Signals.AlarmSign.Phase.AFTERWARDS);
        assertThat(at(LiveMoments.pulling(3, 7, 902)).phase()).isEqualTo(Signals.AlarmSign.Phase.ACT);
    }

    @Test
    void aHeldSpeedThatMustEndSoundsToo() {
        assertThat(at(LiveMoments.holding(hold(HoldNow.Step.HOLD), true)).phase())
                .isEqualTo(Signals.AlarmSign.Phase.NONE);
        Signals.AlarmSign act = at(LiveMoments.holding(hold(HoldNow.Step.CLOSE_TIME), true));
        assertThat(act.phase()).isEqualTo(Signals.AlarmSign.Phase.ACT);
        assertThat(act.act()).isEqualTo("CLOSE THROTTLE");
        assertThat(act.reason()).isEqualTo("3750 rpm ends: the time at load is over.");
        Signals.AlarmSign after = at(LiveMoments.holding(hold(HoldNow.Step.GO), false));
        assertThat(after.phase()).isEqualTo(Signals.AlarmSign.Phase.AFTERWARDS);
        assertThat(after.afterwards()).isEqualTo("Let it cool.");
    }

    @Test
    void aHeldSpeedThatIsDoneIsNoAlarm() {
        assertThat(at(LiveMoments.holding(hold(HoldNow.Step.CLOSE_DONE), true)).phase())
                .isEqualTo(Signals.AlarmSign.Phase.NONE);
    }

    private static HoldNow hold(HoldNow.Step step) {
        return new HoldNow(step, 1, 3, 3750, OptionalDouble.of(22.5), OptionalDouble.of(0), 4, Optional.empty());
    }
}
