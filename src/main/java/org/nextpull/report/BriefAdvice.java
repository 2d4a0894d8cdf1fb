package org.nextpull.report;

import org.nextpull.advice.Advice;
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
            return "Change over to \"" + to.label() + "\": drain, flush, prime, warm; the first pull is discarded.";
        } else if (reason instanceof Reason.Deciding || reason instanceof Reason.Decided) {
            return words.reason(advice);
        } else if (reason instanceof Reason.LimitReached reached) {
            return limit(advice, reached);
        }
        return firstSentence(words.reason(advice));
    }

    private String limit(Advice advice, Reason.LimitReached reached) {
        String what = firstSentence(words.limit(advice, reached));
        String then = switch (advice.code()) {
            case COOL_EXHAUST ->
                " Let it cool. Next pull: " + (AdviceText.isRicher(advice) ? "richer." : "more advanced.");
            case TOO_LEAN -> " Next pull: richer.";
            default -> "";
        };
        return what + then;
    }

    private static String firstSentence(String text) {
        int end = text.indexOf(". ");
        return end < 0 ? text : text.substring(0, end + 1);
    }
}
