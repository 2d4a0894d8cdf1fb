package org.nextpull.window.past;

/**
 * A session in the list, in words.
 *
 * @param id its number
 * @param started when it began
 * @param engine its engine
 * @param what fuel and labels
 * @param pulls how many pulls count, and of how many
 * @param state whether it was closed
 * @param advice what was advised last
 */
record PastRow(long id, String started, String engine, String what, String pulls, String state, String advice) {

    /** The row for whoever hears it. */
    String spoken() {
        return "Session " + id + ", " + started + ", " + engine + ", " + what + ", " + "pulls used: "
                + pulls.replace("/", " of ") + ", " + state + ", " + advice;
    }
}
