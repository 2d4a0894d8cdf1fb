package org.nextpull.report;

import org.nextpull.alarm.Alarm;
import org.nextpull.alarm.Counsel;

/** The words of an alarm: what was passed, by how much, and what to do now. It advises and protects nothing. */
public final class AlarmText {
    private final AdviceText words;

    public AlarmText(Shown shown) {
        this.words = new AdviceText(shown);
    }

    /** A change of an alarm: {@code CLOSE THROTTLE. Exhaust temperature 912 °C, limit 900 °C. Let it cool.}. */
    public String text(Alarm.Event event) {
        return switch (event.kind()) {
            case SOUNDED -> sentence(event.alarm());
            case WORSE -> "WORSE: " + sentence(event.alarm());
            case CLEARED -> "Cleared. " + reason(event.alarm());
        };
    }

    /** An alarm that sounds, with what to do: the act first. */
    public String sentence(Alarm alarm) {
        return act(alarm.counsel()) + ". " + reason(alarm) + " " + afterwards(alarm.counsel());
    }

    /** An alarm that sounded in a pull that is over: what is to do since then the advice says. */
    public String inPull(int pull, Alarm alarm) {
        return "Pull " + pull + ", alarm: " + words.passed(alarm) + ".";
    }

    /** What passed its limit: {@code Exhaust temperature 912 °C, limit 900 °C.}. */
    public String reason(Alarm alarm) {
        return AdviceText.capitalised(words.passed(alarm)) + ".";
    }

    /** How near a limit is: {@code Exhaust temperature 871 °C, limit 900 °C}. */
    public String nearness(Alarm.Headroom headroom) {
        return words.against(headroom.limit(), headroom.value(), headroom.allowed());
    }

    /** The act of the moment, in two words. */
    public static String act(Counsel counsel) {
        return counsel == Counsel.LIFT_AND_SWITCH_OFF ? "SHUT DOWN" : "CLOSE THROTTLE";
    }

    /** What to do once the throttle is closed, and what changes before the next pull. */
    public static String afterwards(Counsel counsel) {
        return switch (counsel) {
            case LIFT_THEN_RETARD -> "Next pull: less advance.";
            case LIFT_THEN_RICHER -> "Next pull: no leaner.";
            case LIFT_AND_COOL_THEN_RICHER -> "Let it cool. Next pull: no further retard and no leaner.";
            case LIFT_AND_COOL -> "Let it cool.";
            case LIFT_AND_SWITCH_OFF -> "Do not restart until you know why.";
            case LIFT_AND_LOOK_AT_FUEL -> "Find why the fuel runs short before the next pull.";
            case LIFT_THEN_LESS_BOOST -> "Less boost before the next pull.";
            case LIFT -> "End the next pull sooner.";
        };
    }
}
