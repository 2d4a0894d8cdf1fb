package org.nextpull.report;

/** What can be typed while a session runs. */
public final class LiveHelp {
    private static final String WORDS = """
                knock, quiet      mark the pull that is running, or the last one: knock was heard, or none was
                correct 3 26 0.87 say what pull 3 was really run with
                exclude 3 reason  take pull 3 out of the fit; reinstate 3 takes it in again
                override 3 reason OVERRIDE the knock and limit blocks from pull 3; your reason goes on the sheet
                note text         keep a remark; note 3 text keeps it with pull 3
                limit exhaust_c 900  change a limit of the plan from now on
                unwatched         say that you watch what no channel does; unwatched exhaust names the limit
                next label name   say which parts are on before their first pull; next fuel name likewise
                why, or ?         read why that is proposed, with the numbers
                show              see all pulls and what they say
                end               end the session
                """;

    private LiveHelp() {}

    /** For a running session. */
    public static String text() {
        return """
                Type              to
                Enter             say that what is proposed is set in the engine
                26 0.87           say what else is set for the pull that is running or comes next: advance and lambda
                """ + WORDS;
    }

    /** For a day of practice, where what is set is run at once. */
    public static String practice() {
        return """
                Type              to
                Enter             run what is proposed; after a stop: end the day
                26 0.87           run another setting: advance and lambda; one number where the plan has one sweep
                """ + WORDS;
    }
}
