package org.nextpull.alarm;

/**
 * A change of an alarm.
 *
 * @param kind what changed
 * @param alarm the alarm as it now stands
 * @param at the row that changed it
 */
public record AlarmEvent(Kind kind, Alarm alarm, RowPlace at) {

    /** What changed. */
    public enum Kind {
        /** The limit has been passed. */
        SOUNDED,
        /** Knock went on. */
        WORSE,
        /** All is within the limit again. */
        CLEARED
    }
}
