package org.nextpull.window.page;

import java.util.List;

/** What must be seen or heard on whatever page is shown. Safe for several threads; nothing here waits. */
public interface Signals {
    /** Sentences above all pages, worst first; they stay until others come. */
    void urgent(List<String> sentences);

    /** An alarm over the whole window, with its sound while the throttle is open. */
    void alarm(AlarmSign sign);

    /** A short sound: what is to be set has changed. */
    void changed();

    /**
     * What an alarm puts over the whole page.
     *
     * @param phase how far it has come
     * @param act what to do now, in two words
     * @param reason what passed its limit, in a sentence a line
     * @param afterwards what to do once the throttle is closed, in a sentence a line
     */
    record AlarmSign(Phase phase, String act, String reason, String afterwards) {
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
}
