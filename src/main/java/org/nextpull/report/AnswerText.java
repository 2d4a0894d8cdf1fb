package org.nextpull.report;

import org.nextpull.advice.Optimum;
import org.nextpull.advice.SweepAnswer;
import org.nextpull.plan.Goal;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.Quantity;

/** What the sweeps and the repeats of a day say, in sentences that carry their intervals. */
public final class AnswerText {
    private final Shown shown;

    public AnswerText(Shown shown) {
        this.shown = shown;
    }

    /** The timing sweep. */
    public String timing(SessionResult result, SweepAnswer answer) {
        return "Timing, " + Shown.count(answer.pulls().size(), "pull") + ": "
                + answer.optimum()
                        .map(found -> "best-torque advance " + Shown.fixed(found.best(), 1) + " deg"
                                + (answer.bracketed() ? least(result) : "") + ", 90 % interval "
                                + Shown.fixed(found.bestInterval().low(), 1) + " to "
                                + Shown.fixed(found.bestInterval().high(), 1) + response(result, found)
                                + (answer.bracketed()
                                        ? "; the peak is bracketed."
                                        : "; the peak itself is not bracketed."))
                        .orElse("not bracketed yet, so no optimum is stated.");
    }

    private static String least(SessionResult result) {
        return " (the least within " + Shown.plain(result.plan().goal().nearBestPercent()) + " % of the peak)";
    }

    private String response(SessionResult result, Optimum found) {
        if (found.response().isEmpty()) {
            return "";
        }
        Quantity quantity = result.plan().goal().response() == Goal.Response.TORQUE ? Quantity.TORQUE : Quantity.POWER;
        return ", " + shown.value(quantity, found.response().getAsDouble()) + " there";
    }

    /** The mixture bracket. */
    public String mixture(SweepAnswer answer) {
        return "Mixture, " + Shown.count(answer.pulls().size(), "pull") + ": "
                + answer.optimum()
                        .map(found -> "best lambda " + lambda(found.peak()) + ", 90 % interval "
                                + lambda(found.peakInterval().low()) + " to "
                                + lambda(found.peakInterval().high())
                                + ". Any lambda from " + lambda(found.flat().low()) + " to "
                                + lambda(found.flat().high())
                                + " costs at most 0.1 %.")
                        .orElse("not bracketed yet, so no optimum is stated.");
    }

    /** The edges of the mixture: {@code rich edge 0.840, lean edge 0.900 (0.2 % below the peak)}; empty where they are not known. */
    public String edges(SessionResult result, SweepAnswer answer) {
        return answer.edges()
                .map(found -> "rich edge " + lambda(found.low()) + ", lean edge " + lambda(found.high()) + " ("
                        + Shown.plain(result.plan().goal().nearBestPercent()) + " % below the peak)")
                .orElse("");
    }

    private static String lambda(double value) {
        return Shown.fixed(value, 3);
    }

    /** Scatter from pull to pull and slow change over the day. */
    public String repeatability(SessionResult result) {
        String scatter = result.repeatability()
                .scatter()
                .map(found ->
                        "Scatter from pull to pull, by repeated settings alone, " + Shown.fixed(found.percent(), 2)
                                + " % (" + Shown.count(found.degreesOfFreedom(), "degree") + " of freedom)")
                .orElse("No setting was repeated, so the scatter from pull to pull is not known");
        String drift = result.repeatability()
                .drift()
                .map(found -> "; slow change over the day " + Shown.fixed(found.percentPerPull(), 3) + " % a pull")
                .orElse("");
        return scatter + drift + ".";
    }
}
