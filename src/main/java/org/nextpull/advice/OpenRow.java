package org.nextpull.advice;

import java.util.Locale;

/**
 * A row of the band for which no best advance is stated.
 *
 * @param rpm speed of the row
 * @param why why not
 */
public record OpenRow(double rpm, Why why) {

    /** Why nothing is stated. */
    public enum Why {
        /** Fewer than three pulls measured it. */
        TOO_FEW_PULLS,
        /** Its own pulls do not bracket its peak. */
        NOT_BRACKETED;

        /** As JSON writes it: {@code not-bracketed}. */
        public String id() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }
}
