package org.nextpull.finding;

/** How much a finding matters, least first. */
public enum Severity {
    /** Worth knowing; nothing to do. */
    NOTE,
    /** The answer stands, but the operator should look. */
    WARNING,
    /** Something could not be used. */
    ERROR
}
