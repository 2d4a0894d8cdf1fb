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
        if (reason instanceof Reason.ChangeOver to) {
            return "Change over to \"" + to.label()
                    + "\": drain, flush, prime, warm; the first pull counts for nothing.";
        } else if (reason instanceof Reason.Deciding || reason instanceof Reason.Decided) {
            return words.reason(advice);
        } else if (reason instanceof Reason.LimitReached reached) {
            return limit(advice.code(), reached);
        }
        return reason instanceof Reason.Ended || reason instanceof Reason.Nothing
                ? ended(advice.code())
                : firstSentence(words.reason(advice));
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
