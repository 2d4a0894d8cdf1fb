package org.nextpull.report.text;

import java.util.List;
import org.nextpull.compare.Comparison;
import org.nextpull.compare.ComparisonResult;
import org.nextpull.compare.LabelScatter;
import org.nextpull.compare.Looks;
import org.nextpull.compare.MeasuredComparison;
import org.nextpull.compare.PercentInterval;
import org.nextpull.compare.RowDifference;
import org.nextpull.plan.Goal;
import org.nextpull.report.Shown;
import org.nextpull.session.ComparedDay;
import org.nextpull.session.OrderFrom;
import org.nextpull.unit.Quantity;

/** What {@code compare} prints: the verdict on each label first, then what it rests on. */
public final class CompareText {
    private final Shown shown;

    public CompareText(Shown shown) {
        this.shown = shown;
    }

    /** The comparison of a day. */
    public String text(ComparedDay day, MeasuredComparison both, Goal.Response response) {
        ComparisonResult result = by(both, response);
        Quantity quantity = response == Goal.Response.TORQUE ? Quantity.TORQUE : Quantity.POWER;
        StringBuilder text = new StringBuilder();
        for (Comparison one : result.comparisons()) {
            text.append(verdict(one, result, quantity)).append('\n');
        }
        text.append(groups(result)).append(further(result)).append(basis(day, result));
        both.torque().ifPresent(torque -> torque.comparisons().forEach(one -> text.append(rows(one, torque))));
        return text.toString();
    }

    private static ComparisonResult by(MeasuredComparison both, Goal.Response response) {
        return both.by(
                response == Goal.Response.POWER
                        ? MeasuredComparison.Response.POWER
                        : MeasuredComparison.Response.TORQUE);
    }

    private String verdict(Comparison one, ComparisonResult result, Quantity quantity) {
        String against = one.label() + " against " + result.reference().label() + ": ";
        String difference = signed(one.difference().percent()) + " % (95 % interval "
                + interval(one.difference().interval()) + "), "
                + plus(one.difference().value())
                + shown.value(quantity, one.difference().value());
        String notFinal = result.isFinal() ? "" : " Not final: planned pulls are still to come.";
        return against + words(one, result.worthPercent()) + " " + difference + "." + notFinal;
    }

    private static String words(Comparison one, double worth) {
        String matters = Shown.plain(worth) + " %";
        return switch (one.verdict()) {
            case MORE -> "more.";
            case LESS -> "less.";
            case SAME ->
                one.isRealButSmall()
                        ? "the same within " + matters + "; a real but small difference."
                        : "the same within " + matters + ".";
            case CANNOT_TELL ->
                "cannot tell."
                        + (one.pullsNeeded().isPresent()
                                ? " About " + one.pullsNeeded().getAsInt()
                                        + " more pulls would settle it at this scatter."
                                : " No day's work would settle it at this scatter.");
        };
    }

    private static String groups(ComparisonResult result) {
        if (result.ranking().size() < 3) {
            return "";
        }
        List<String> groups =
                result.groups().stream().map(group -> String.join(" = ", group)).toList();
        return "Ranked: " + String.join(", ", result.ranking()) + ". No real difference within: "
                + String.join("; ", groups) + ".\n";
    }

    private static String further(ComparisonResult result) {
        return result.further()
                .map(further -> "To go on: run " + further.order().size() + " more pulls in this order: "
                        + String.join(" ", further.order()) + ".\n"
                        + "Then compare all pulls with " + option(further.looks())
                        + ", so that looking again does not raise the rate of false claims.\n")
                .orElse("");
    }

    private static String option(Looks looks) {
        if (looks instanceof Looks.Planned planned) {
            return "--planned " + planned.pulls()
                    + (planned.earlier() > 0 ? " --looks-before " + planned.earlier() : "");
        }
        return looks instanceof Looks.Open open ? "--looks-before " + open.earlier() : "--each-block";
    }

    private static String basis(ComparedDay day, ComparisonResult result) {
        TextTable table = new TextTable("label", "pulls", "scatter %");
        for (LabelScatter scatter : result.scatters()) {
            table.row(
                    scatter.label(),
                    String.valueOf(scatter.pulls()),
                    Shown.fixed(scatter.scatter().percent(), 2));
        }
        String drift = result.drift()
                .map(found -> "Slow change over the day " + Shown.fixed(found.percentPerPull(), 3)
                        + " % a pull, taken out.\n")
                .orElse("Too few pulls to tell a slow change over the day.\n");
        return "\n" + table.text() + drift + order(day.orderFrom());
    }

    private static String order(OrderFrom from) {
        return "Order of the pulls: "
                + switch (from) {
                    case ORDER_COLUMN -> "from the order column";
                    case CLOCK -> "from the dates and times in the logs";
                    case COMMAND_LINE -> "as the files were named and the pulls stand in them";
                }
                + ".\n";
    }

    private String rows(Comparison one, ComparisonResult result) {
        if (one.rows().isEmpty()) {
            return "";
        }
        String unit = shown.unit(Quantity.TORQUE).symbol();
        TextTable table = new TextTable(
                "rpm", one.label() + " " + unit, result.reference().label() + " " + unit, "%", "from", "to");
        for (RowDifference row : one.rows()) {
            table.row(
                    Shown.fixed(row.rpm(), 0),
                    shown.torque(row.levels().label()),
                    shown.torque(row.levels().reference()),
                    signed(row.percent()),
                    signed(row.band().low()),
                    signed(row.band().high()));
        }
        return "\n" + one.label() + " by speed; the band holds at all speeds together:\n" + table.text();
    }

    private static String interval(PercentInterval interval) {
        return signed(interval.low()) + " to " + signed(interval.high());
    }

    private static String signed(double percent) {
        return plus(percent) + Shown.fixed(percent, 2);
    }

    private static String plus(double value) {
        return value >= 0 ? "+" : "";
    }
}
