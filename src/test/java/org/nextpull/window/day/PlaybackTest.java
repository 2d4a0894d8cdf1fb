package org.nextpull.window.day;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Going through a day again: time is an argument. */
class PlaybackTest {
    private static final double TICK_S = 0.1;

    private static Playback after(Playback playback, double seconds) {
        Playback now = playback;
        for (int tick = 0; tick < Math.round(seconds / TICK_S); tick++) {
            now = now.after(TICK_S);
        }
        return now;
    }

    @Test
    void pullsAppearInOrderAtTheChosenSpeed() {
        Playback start = Playback.start(5, 4);
        assertThat(after(start, 3.8).shown()).isZero();
        assertThat(after(start, 4.2).shown()).isEqualTo(1);
        assertThat(after(start, 12.5).shown()).isEqualTo(3);
        assertThat(after(start.faster().faster(), 3.2).shown()).isEqualTo(3);
        assertThat(after(start.slower(), 8.2).shown()).isEqualTo(1);
    }

    @Test
    void itStandsStillAtTheEndAndBeginsAgainFromThere() {
        Playback end = after(Playback.start(2, 1), 5);
        assertThat(end.isAtEnd()).isTrue();
        assertThat(end.paused()).isTrue();
        assertThat(end.pauseOrGoOn().shown()).isZero();
        assertThat(end.pauseOrGoOn().paused()).isFalse();
    }

    @Test
    void pausedItStandsStill() {
        Playback paused = Playback.start(5, 1).pauseOrGoOn();
        assertThat(after(paused, 60)).isEqualTo(paused);
        assertThat(after(paused.pauseOrGoOn(), 1.2).shown()).isEqualTo(1);
    }

    @Test
    void aStepPausesAndStaysWithinTheDay() {
        Playback start = Playback.start(3, 1);
        assertThat(start.step(1)).isEqualTo(new Playback(1, 3, 1, true, 0));
        assertThat(start.step(-1).shown()).isZero();
        assertThat(start.step(99).shown()).isEqualTo(3);
    }

    @Test
    void theSpeedHasItsEnds() {
        Playback playback = Playback.start(3, 4);
        for (int times = 0; times < 20; times++) {
            playback = playback.faster();
        }
        assertThat(playback.secondsAPull()).isEqualTo(0.25);
        for (int times = 0; times < 20; times++) {
            playback = playback.slower();
        }
        assertThat(playback.secondsAPull()).isEqualTo(64);
    }

    @Test
    void anEmptyDayStandsStill() {
        assertThat(Playback.start(0, 1).paused()).isTrue();
        assertThat(Playback.start(0, 1).after(100).shown()).isZero();
    }
}
