package org.nextpull.window.page;

/**
 * What an alarm puts over the whole page.
 *
 * @param phase how far it has come
 * @param act what to do now, in two words
 * @param reason what passed its limit, in a sentence a line
 * @param afterwards what to do once the throttle is closed, in a sentence a line
 */
public record AlarmSign(Phase phase, String act, String reason, String afterwards) {
    /** How far an alarm has come. */
    public enum Phase {
        /** None, or over. */
        NONE,
        /** A limit was passed and the throttle is still open. */
        ACT,
        /** The throttle is closed: what to do next. */
        AFTERWARDS
    }

    public static AlarmSign none() {
        return new AlarmSign(Phase.NONE, "", "", "");
    }
}
