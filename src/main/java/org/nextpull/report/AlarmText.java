package org.nextpull.report;

import org.nextpull.alarm.Alarm;
import org.nextpull.alarm.AlarmEvent;
import org.nextpull.alarm.Counsel;

/** The words of an alarm: what was passed, by how much, and what to do now. It advises and protects nothing. */
public final class AlarmText {
    private final AdviceText words;

    public AlarmText(Shown shown) {
        this.words = new AdviceText(shown);
    }

    /** A change of an alarm: {@code ALARM: exhaust temperature 912 degC, limit 900 degC. LIFT and let it cool.}. */
    public String text(AlarmEvent event) {
        return switch (event.kind()) {
            case SOUNDED ->
                "ALARM: " + words.passed(event.alarm()) + ". "
                        + counsel(event.alarm().counsel());
            case WORSE ->
                "ALARM, worse: " + words.passed(event.alarm()) + ". "
                        + counsel(event.alarm().counsel());
            case CLEARED -> "Within the limit again; it was " + words.passed(event.alarm()) + ".";
        };
    }

    /** An alarm that sounds: {@code exhaust temperature 912 degC, limit 900 degC}. */
    public String sounding(Alarm alarm) {
        return words.passed(alarm);
    }

    /** An alarm that sounds, with what to do. */
    public String sentence(Alarm alarm) {
        return "ALARM: " + words.passed(alarm) + ". " + counsel(alarm.counsel());
    }

    /** An alarm that sounded in a pull that is over, with what was to do. */
    public String inPull(int pull, Alarm alarm) {
        return "ALARM in pull " + pull + ": " + words.passed(alarm) + ". " + counsel(alarm.counsel());
    }

    /** What to do now, and what changes before the next pull. */
    public static String counsel(Counsel counsel) {
        return switch (counsel) {
            case LIFT_THEN_RETARD -> "LIFT; less advance for the next pull.";
            case LIFT_THEN_RICHER -> "LIFT; no leaner.";
            case LIFT_AND_COOL_THEN_RICHER -> "LIFT and let it cool; no further retard and no leaner.";
            case LIFT_AND_COOL -> "LIFT and let it cool.";
            case LIFT_AND_SWITCH_OFF -> "LIFT and switch off; find out why before it runs again.";
            case LIFT_AND_LOOK_AT_FUEL -> "LIFT; find out why the fuel runs short before the next pull.";
            case LIFT_THEN_LESS_BOOST -> "LIFT; less boost before the next pull.";
            case LIFT -> "LIFT; lift earlier next time.";
        };
    }
}
