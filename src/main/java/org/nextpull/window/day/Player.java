package org.nextpull.window.day;

import java.util.function.UnaryOperator;

/** The keys of a day that is gone through again. Every method returns at once. */
public interface Player {
    /** Changes how the day goes on. */
    void play(UnaryOperator<Playback> change);

    default void pauseOrGoOn() {
        play(Playback::pauseOrGoOn);
    }

    default void forth() {
        play(playback -> playback.step(1));
    }

    default void back() {
        play(playback -> playback.step(-1));
    }

    default void faster() {
        play(Playback::faster);
    }

    default void slower() {
        play(Playback::slower);
    }
}
