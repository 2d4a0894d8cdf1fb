package org.nextpull.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.nextpull.advice.Chosen;
import org.nextpull.advice.ChosenBy;
import org.nextpull.advice.SweepAnswer;
import org.nextpull.advice.Verdict;
import org.nextpull.plan.Goal;
import org.nextpull.scatter.Scatter;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Quantity;
import org.nextpull.unit.Span;

/** What the sweeps and the repeats of a day say, in sentences that carry their intervals. */
public final class AnswerText {
    /** Lambdas nearer than this are printed as one. */
    private static final double SAME_LAMBDA = 0.0025;

    /** A standard deviation from so few repeats may be wrong by half; common practice, no source. */
    private static final int ROUGH = 3;

    private final Shown shown;

    public AnswerText(Shown shown) {
        this.shown = shown;
    }

    /** The timing sweep. */
    public String timing(SessionResult result, SweepAnswer answer) {
        return "Spark sweep, " + Shown.count(answer.pulls().size(), "pull") + ": "
                + answer.optimum()
                        .map(found -> "MBT " + Shown.fixed(found.best(), 1) + " deg" + least(result)
                                + ", 90 % CI " + span(found.bestInterval()) + response(result, found.response())
                                + (found.isPeakPlaced()
                                        ? "; fitted peak " + Shown.fixed(found.peak(), 1) + " deg, bracketed."
                                        : "; the pulls do not reach far enough past the peak to state it: by the fit"
                                                + " it makes "
                                                + nearBest(result) + " more."))
                        .or(() -> answer.capped().map(found -> capped(result, answer, found)))
                        .orElse("not bracketed, so no MBT is stated.");
    }

    private static String least(SessionResult result) {
        return " (least advance within " + nearBest(result) + " of the peak)";
    }

    private static String nearBest(SessionResult result) {
        return Shown.plain(result.plan().goal().nearBestPercent()) + " %";
    }

    private String capped(SessionResult result, SweepAnswer answer, SweepAnswer.Capped found) {
        boolean knock = found.by() == ChosenBy.KNOCK_LIMIT;
        String permits = knock && answer.limit().isPresent()
                ? "the knock limit of " + Shown.fixed(answer.limit().getAsDouble(), 1) + " deg"
                : knock ? "the knock limit" : "the plan";
        return (knock ? "knock-limited" : "plan-limited") + " advance " + Shown.fixed(found.best(), 1)
                + " deg, as far as " + permits + " permits" + response(result, found.response())
                + (answer.bracketed()
                        ? "; the peak lies beyond it."
                        : "; the peak is not bracketed, so no MBT is stated.");
    }

    private static String span(Span interval) {
        return Shown.fixed(interval.low(), 1) + " to " + Shown.fixed(interval.high(), 1);
    }

    private String response(SessionResult result, OptionalDouble found) {
        if (found.isEmpty()) {
            return "";
        }
        Quantity quantity = result.plan().goal().response() == Goal.Response.TORQUE ? Quantity.TORQUE : Quantity.POWER;
        return ", " + shown.value(quantity, found.getAsDouble()) + " there";
    }

    /**
     * Why the setting that is left lies beside what its sweep states: outside the interval of MBT, or rich of best lambda; empty where
     * it does not.
     */
    public List<String> moved(Verdict verdict) {
        List<String> moved = new ArrayList<>();
        Optional<Chosen> chosen = verdict.chosen();
        verdict.timing()
                .flatMap(SweepAnswer::optimum)
                .ifPresent(found -> chosen.flatMap(
                                left -> left.setting().advance().or(left.setting()::offset))
                        .map(Advance::deg)
                        .filter(deg -> !found.bestInterval().contains(deg))
                        .ifPresent(deg -> moved.add(Shown.fixed(deg, 1) + " deg stays, outside the CI of MBT: "
                                + why(
                                        chosen.orElseThrow(),
                                        "later pulls moved MBT by less than it takes to run it again")
                                + ".")));
        verdict.mixture()
                .flatMap(SweepAnswer::optimum)
                .ifPresent(found -> chosen.flatMap(left -> left.setting().lambda())
                        .map(Lambda::value)
                        .filter(lambda -> Math.abs(lambda - found.peak()) > SAME_LAMBDA)
                        .ifPresent(lambda -> moved.add("Lambda " + lambda(lambda) + " stays and not "
                                + lambda(found.peak()) + ": "
                                + why(
                                        chosen.orElseThrow(),
                                        found.flat().contains(lambda)
                                                ? "it is the rich side of the flat top"
                                                : "it is on the rich side of best lambda")
                                + ".")));
        return moved;
    }

    private static String why(Chosen chosen, String usual) {
        return switch (chosen.by()) {
            case PEAK -> usual;
            case KNOCK_LIMIT -> "the knock limit decides";
            case PLAN_LIMIT -> "a limit of the plan decides";
            case HIGHEST_TRIED -> "it is the clean setting that read highest, and the day has not ended";
        };
    }

    /** The advance that knock leaves, and from which pulls. */
    public Optional<String> knockLimit(SessionResult result, SweepAnswer answer) {
        if (answer.limit().isEmpty()) {
            return Optional.empty();
        }
        double margin = result.plan().limits().knockMarginDeg();
        double limit = answer.limit().getAsDouble();
        return Optional.of("Knock limit " + Shown.fixed(limit, 1) + " deg: knock at " + Shown.fixed(limit + margin, 1)
                + " deg, minus the margin of " + Shown.fixed(margin, 1)
                + " deg. Only less advance may stay.");
    }

    /** The rows of the band without a best advance, a sentence for each reason. */
    public static List<String> openRows(SweepAnswer answer) {
        List<String> sentences = new ArrayList<>();
        for (SweepAnswer.OpenRow.Why why : SweepAnswer.OpenRow.Why.values()) {
            String rows = stretches(answer, why);
            if (!rows.isEmpty()) {
                sentences.add("No MBT at " + rows + " rpm: "
                        + (why == SweepAnswer.OpenRow.Why.NOT_BRACKETED
                                ? "not bracketed there."
                                : "fewer than three pulls measured there."));
            }
        }
        return sentences;
    }

    /** Neighbouring rows as stretches: {@code 3500 to 4000, 6750}. */
    private static String stretches(SweepAnswer answer, SweepAnswer.OpenRow.Why why) {
        TreeMap<Double, Boolean> band = new TreeMap<>();
        answer.rows().forEach(row -> band.put(row.rpm(), false));
        answer.openRows().forEach(row -> band.put(row.rpm(), row.why() == why));
        List<String> stretches = new ArrayList<>();
        Optional<Double> from = Optional.empty();
        for (Map.Entry<Double, Boolean> row : band.entrySet()) {
            double rpm = row.getKey();
            if (!row.getValue()) {
                from = Optional.empty();
                continue;
            }
            String first = Shown.fixed(from.orElse(rpm), 0);
            if (from.isPresent()) {
                stretches.set(stretches.size() - 1, first + " to " + Shown.fixed(rpm, 0));
            } else {
                stretches.add(first);
                from = Optional.of(rpm);
            }
        }
        return String.join(", ", stretches);
    }

    /** The mixture bracket. */
    public String mixture(SweepAnswer answer) {
        return "Mixture sweep, " + Shown.count(answer.pulls().size(), "pull") + ": "
                + answer.optimum()
                        .map(found -> "best lambda " + lambda(found.peak()) + ", 90 % CI "
                                + lambda(found.peakInterval().low()) + " to "
                                + lambda(found.peakInterval().high())
                                + "; flat top " + lambda(found.flat().low()) + " to "
                                + lambda(found.flat().high())
                                + " (within 0.1 %).")
                        .orElse("not bracketed: its peak may lie beyond what ran clean, so no best lambda is stated.");
    }

    /** The edges of the mixture: {@code RBT 0.840, LBT 0.900 (0.2 % below the peak)}; empty where they are not known. */
    public String edges(SessionResult result, SweepAnswer answer) {
        return answer.edges()
                .map(found -> "RBT " + lambda(found.low()) + ", LBT " + lambda(found.high()) + " ("
                        + Shown.plain(result.plan().goal().nearBestPercent()) + " % below the peak)")
                .orElse("");
    }

    private static String lambda(double value) {
        return Shown.fixed(value, 3);
    }

    /** Repeatability, and the drift where it is more than its own error. */
    public String repeatability(SessionResult result) {
        return result.repeatability().scatter().map(AnswerText::repeats).orElseGet(() -> byFit(result))
                + result.repeatability()
                        .drift()
                        .filter(found -> Math.abs(found.percentPerPull()) > found.standardError())
                        .map(found -> " Drift " + (found.percentPerPull() >= 0 ? "+" : "")
                                + Shown.fixed(found.percentPerPull(), 3) + " % per pull.")
                        .orElse("");
    }

    private static String byFit(SessionResult result) {
        return result.scatter()
                .map(scatter -> "Repeatability about " + Shown.fixed(scatter.percent(), 2)
                        + " % (1 SD, by the fit: no setting was repeated).")
                .orElse("Repeatability not known: no setting was repeated.");
    }

    private static String repeats(Scatter scatter) {
        double repeats = scatter.degreesOfFreedom();
        return "Repeatability " + Shown.fixed(scatter.percent(), 2) + " % (1 SD, from " + Shown.count(repeats, "repeat")
                + (repeats <= ROUGH ? ", rough" : "") + ").";
    }
}
