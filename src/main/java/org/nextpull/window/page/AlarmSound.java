package org.nextpull.window.page;

/** The sound of alarms. Safe for several threads; nothing here waits. */
public interface AlarmSound {
    /** Sounds, or falls silent. */
    void sound(boolean on);

    /** One short sound. */
    void chime();
}
