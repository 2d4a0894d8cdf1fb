package org.nextpull.finding;

import java.util.Locale;

/** Every finding that the tool can make. The handbook page "Findings" lists them; {@code report} has a sentence for each. */
public enum FindingCode {
    // files and plans
    FILE_NOT_FOUND,
    FILE_UNREADABLE,
    PLAN_SYNTAX,
    // columns and rows of logs
    FILE_EMPTY,
    // air and correction
    AIR_OUTSIDE_STANDARD,
    // pulls
    PULL_CUT_SHORT;

    /** The code as JSON and the handbook write it: {@code file-not-found}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
