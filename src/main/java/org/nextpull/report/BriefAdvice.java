package org.nextpull.report;

import org.nextpull.advice.Advice;
import org.nextpull.advice.AdviceCode;
import org.nextpull.advice.Reason;

/** Why, in one sentence that can be read from a distance; {@link AdviceText#because} has the numbers. */
final class BriefAdvice {
    private final AdviceText words;

    BriefAdvice(AdviceText words) {
        this.words = words;
    }

    String sentence(Advice advice) {
        Reason reason = advice.reason();
        if (reason instanceof Reason.Baseline baseline) {
            return baseline.done() == 0
                    ? "The start setting of the plan: the baseline for all that follows."
                    : "The first setting, remade: two readings of it show how far pulls scatter.";
        } else if (reason instanceof Reason.Searching searching) {
            return searching(advice.code(), searching);
        } else if (reason instanceof Reason.BackedOff backedOff) {
            return "The mixture bracket runs with the spark " + Shown.fixed(backedOff.backedOffDeg(), 1) + " deg below "
                    + Shown.fixed(backedOff.fromDeg(), 1) + " deg.";
        } else if (reason instanceof Reason.RichFirst) {
            return "Rich first; the lean side is tried only if the rich step was clean.";
        } else if (reason instanceof Reason.Confirming confirming) {
            return AdviceText.endOfSweeps(confirming.by()) + "; the final setting is run to confirm it, "
                    + (confirming.done() + 1) + " of " + confirming.wanted() + ".";
        } else if (reason instanceof Reason.OutOfWindow
                || reason instanceof Reason.Knocked
                || reason instanceof Reason.NotWatched) {
            return firstSentence(words.reason(advice));
        } else if (reason instanceof Reason.FirstMap
                || reason instanceof Reason.MapSearch
                || reason instanceof Reason.MapEnded) {
            return firstSentence(words.reason(advice));
        } else if (reason instanceof Reason.LimitReached reached) {
            return limit(advice.code(), reached);
        }
        return ended(advice.code());
    }

    private static String searching(AdviceCode code, Reason.Searching searching) {
        String where = "the peak most likely lies from "
                + AdviceText.span(searching.factor(), searching.evidence().peak());
        return switch (code) {
            case CLIMB_TIMING -> "One step of advance, no more: " + where + ".";
            case CLIMB_MIXTURE -> "Leaner by one step, no more: " + where + ".";
            case CHECK_TIMING -> "The mixture has moved, so the timing is checked again at it.";
            case REPEAT_SETTING -> "Running this setting again tells more than a new one.";
            case REPEAT_DOUBTFUL -> "One pull alone carries the verdict, so it is run again before it is believed.";
            default -> "This setting tells most: " + where + ".";
        };
    }

    private String limit(AdviceCode code, Reason.LimitReached reached) {
        String what = firstSentence(words.limit(code, reached));
        String then = switch (code) {
            case COOL_EXHAUST -> " Lift and let it cool, then richer.";
            case TOO_LEAN -> " Richer for the next pull.";
            default -> "";
        };
        return what + then;
    }

    private static String ended(AdviceCode code) {
        return switch (code) {
            case SETTLED -> "What is left to gain is below what a pull can show.";
            case SCATTER_LIMITED -> "Another pull would tell no more at this scatter.";
            case KNOCK_LIMITED -> "The knock limit ends the climb.";
            case PLAN_LIMIT -> "The plan's limit ends the climb; torque may still rise beyond it.";
            case LIMIT_MET -> "A limit that was met leaves no leaner mixture to try.";
            case BUDGET -> "The plan's budget of pulls is used up and the answer is not settled.";
            default -> "The sweep ends.";
        };
    }

    private static String firstSentence(String text) {
        int end = text.indexOf(". ");
        return end < 0 ? text : text.substring(0, end + 1);
    }
}
