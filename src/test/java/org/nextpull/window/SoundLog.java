package org.nextpull.window;

import java.util.concurrent.atomic.AtomicInteger;
import org.nextpull.window.page.AlarmSound;

/** Hears the alarms of a window under test. */
final class SoundLog implements AlarmSound {
    private final AtomicInteger chimes = new AtomicInteger();
    private volatile boolean sounds;

    @Override
    public void sound(boolean on) {
        sounds = on;
    }

    @Override
    public void chime() {
        chimes.incrementAndGet();
    }

    boolean sounds() {
        return sounds;
    }

    int chimes() {
        return chimes.get();
    }
}
