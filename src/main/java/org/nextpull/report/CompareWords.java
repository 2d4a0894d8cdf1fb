package org.nextpull.report;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.nextpull.compare.Comparison;
import org.nextpull.compare.ComparisonResult;
import org.nextpull.compare.InterimLooks;
import org.nextpull.compare.MeasuredComparison;
import org.nextpull.plan.Goal;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.Quantity;

/** What a comparison of labels says, in sentences that carry their intervals. */
public final class CompareWords {
    private final Shown shown;
    private final MeasuredComparison both;
    private final Goal.Response decides;

    /** Words in the reader's units, on the response that the operator goes by or, where a pull does not have it, on the other. */
    public CompareWords(Shown shown, Goal.Response response, MeasuredComparison both) {
        this.shown = shown;
        this.both = both;
        this.decides = both.decides(response);
    }

    /** The comparison of that response. */
    public ComparisonResult deciding() {
        return both.by(decides);
    }

    /** What that response is. */
    public Quantity quantity() {
        return decides == Goal.Response.TORQUE ? Quantity.TORQUE : Quantity.POWER;
    }

    /** The verdict on a label, and whether it stands. */
    public String verdict(Comparison one) {
        return standing(one) + (deciding().isFinal() ? "" : " Not final: planned pulls are still to come.");
    }

    /** The verdict on a label that stands. */
    public String standing(Comparison one) {
        ComparisonResult result = deciding();
        String difference = signed(one.difference().percent()) + " % (95 % CI "
                + interval(one.difference().interval()) + "), "
                + plus(one.difference().value())
                + shown.value(quantity(), one.difference().value()) + ".";
        String worth = Shown.plain(result.worthPercent()) + " %";
        return "\"" + one.label() + "\" vs \"" + result.reference().label() + "\": "
                + switch (one.verdict()) {
                    case MORE ->
                        "GAIN " + difference
                                + smaller(one.difference().interval().low(), result);
                    case LESS ->
                        "LOSS " + difference
                                + smaller(-one.difference().interval().high(), result);
                    case SAME ->
                        "NO USEFUL DIFFERENCE (inside \u00b1" + worth + "). " + difference
                                + (one.isRealButSmall() ? " Real, but too small to matter." : "");
                    case CANNOT_TELL -> "NOT SETTLED. " + difference + " " + toSettle(one.pullsNeeded());
                };
    }

    private static String smaller(double leastPercent, ComparisonResult result) {
        return leastPercent < result.worthPercent()
                ? " Real; may be less than the " + Shown.plain(result.worthPercent()) + " % you asked for."
                : "";
    }

    private static String toSettle(OptionalInt pulls) {
        return pulls.isPresent()
                ? "Run about " + Shown.count(pulls.getAsInt(), "more pull") + ", A-B-B-A."
                : "Too much scatter for any sensible number of pulls. Improve repeatability first.";
    }

    /** In which order the labels come, and which of them cannot be told apart; empty below three labels. */
    public Optional<String> groups(ComparisonResult result) {
        if (result.ranking().size() < 3) {
            return Optional.empty();
        }
        String alike = result.groups().stream()
                .filter(group -> group.size() > 1)
                .map(group -> String.join(" and ", group))
                .collect(Collectors.joining("; "));
        return Optional.of("Ranked: " + String.join(", ", result.ranking()) + ". "
                + (alike.isEmpty() ? "Each differs from the next." : "Not told apart: " + alike + "."));
    }

    /** How to go on, a sentence each; empty when all is settled or out of reach. */
    public List<String> further(ComparisonResult result) {
        return result.further()
                .map(further -> List.of("Run " + further.order().size() + " more: " + String.join(" ", further.order())
                        + ". Then compare with " + option(further.looks()) + "."))
                .orElse(List.of());
    }

    private static String option(InterimLooks looks) {
        if (looks instanceof InterimLooks.Planned planned) {
            return "--planned " + planned.pulls()
                    + (planned.earlier() > 0 ? " --looks-before " + planned.earlier() : "");
        }
        return looks instanceof InterimLooks.Open open ? "--looks-before " + open.earlier() : "--each-block";
    }

    /** The drift that was taken out. */
    public static String drift(ComparisonResult result) {
        double percent = result.drift().percentPerPull();
        return "Drift " + plus(percent) + Shown.fixed(percent, 3) + " % per pull, removed.";
    }

    /** Where the order of the pulls comes from. */
    public static String order(SessionResult.OrderFrom from) {
        return "Order of the pulls: "
                + switch (from) {
                    case ORDER_COLUMN -> "from the order column";
                    case CLOCK -> "from the dates and times in the logs";
                    case COMMAND_LINE -> "as the files were named and the pulls stand in them";
                }
                + ".";
    }

    /** A percentage with its sign: {@code +1.02}. */
    public static String signed(double percent) {
        return plus(percent) + Shown.fixed(percent, 2);
    }

    static String interval(Comparison.PercentInterval interval) {
        return signed(interval.low()) + " to " + signed(interval.high());
    }

    private static String plus(double value) {
        return value >= 0 ? "+" : "";
    }
}
