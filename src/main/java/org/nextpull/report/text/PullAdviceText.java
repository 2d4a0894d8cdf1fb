package org.nextpull.report.text;

import java.util.ArrayList;
import java.util.List;
import org.nextpull.compare.PullAdvice;
import org.nextpull.compare.PullPlan;
import org.nextpull.report.Shown;
import org.nextpull.scatter.Scatter;

/** What {@code plan-pulls} prints. */
public final class PullAdviceText {

    /** The plan for a day. */
    public String text(PullAdvice advice, Scatter scatter, double wanted) {
        String wish = "To tell " + Shown.plain(wanted) + " % at a repeatability of " + Shown.plain(scatter.percent())
                + " %" + (advice.swept() ? ", after a sweep of each" : "");
        StringBuilder text = new StringBuilder();
        advice.cheapest().ifPresent(asked -> text.append(cheapest(wish, asked)));
        if (advice.interleaved().isEmpty()) {
            return text.append(wish)
                    .append(": out of reach. Even ")
                    .append(PullPlan.MOST_PULLS)
                    .append(" pulls A-B-B-A would only tell ")
                    .append(Shown.fixed(advice.resolvedByMost(), 2))
                    .append(
                            " %. Improve repeatability first: same temperatures, same rate, the setting re-set each time.")
                    .toString();
        }
        PullPlan plan = advice.interleaved().get();
        text.append(wish).append(", run ").append(plan.pulls()).append(" pulls, A-B-B-A:\n  ");
        text.append(String.join(" ", plan.order())).append('\n');
        text.append(found(plan)).append('\n');
        text.append("In blocks, a discarded flushing pull after each change-over: ");
        String each = plan.order().stream().distinct().count() > 2
                ? " of each label with " + plan.order().get(0)
                : "";
        for (PullAdvice.Blocks day : advice.blocks()) {
            text.append("with ")
                    .append(day.changeOvers())
                    .append(" change-overs")
                    .append(each)
                    .append(' ')
                    .append(day.plan().map(PullAdviceText::blocks).orElse("out of reach"))
                    .append("; ");
        }
        text.append("with one never, since drift looks like a gain then.\n");
        text.append(
                advice.cautious().isPresent()
                        ? "To be safe about the repeatability figure: "
                                + advice.cautious().getAsInt()
                                + " pulls, A-B-B-A."
                        : "At the upper end of what the repeatability figure may be, the wish is out of reach.");
        return text.toString();
    }

    private static String cheapest(String wish, PullAdvice.Cheapest asked) {
        PullAdvice.ChangeCost cost = asked.cost();
        String with = wish
                + (cost.number().isPresent()
                        ? " with " + cost.number().getAsInt() + " change-overs of each label with the reference"
                        : " where a change-over costs " + Shown.count(cost.pulls(), "pull"));
        if (asked.plan().isEmpty()) {
            return with + ": out of reach in blocks.\n";
        }
        PullPlan plan = asked.plan().get();
        return with + ", run " + plan.pulls() + " pulls in blocks: " + lengths(plan.order()) + ".\n"
                + "  After each of the " + plan.changeOvers()
                + " change-overs run one pull more, which flushes the old fuel out and is discarded: "
                + (plan.pulls() + plan.flushing()) + " pulls"
                + (cost.pulls() > 0
                        ? ", at the cost of " + Shown.plain(plan.cost(cost.pulls())) + " with the change-overs"
                        : "")
                + ".\n" + found(plan) + "\n";
    }

    private static String found(PullPlan plan) {
        return "  Result good to \u00b1" + Shown.fixed(plan.halfWidthPercent(), 2)
                + (plan.order().stream().distinct().count() > 2
                        ? " % (95 % CI), for all labels together"
                        : " % (95 % CI)")
                + ". Chance to detect such a difference: " + Shown.fixed(100 * plan.power(), 0)
                + " % if it is compared with --planned " + plan.pulls() + ", "
                + Shown.fixed(100 * plan.powerUnplanned(), 0) + " % if nothing was planned.";
    }

    private static String blocks(PullPlan plan) {
        return plan.pulls() + " pulls (" + lengths(plan.order()) + ")";
    }

    /** A block after the other: {@code 3 A, 7 B, 7 A, 3 B}. */
    private static String lengths(List<String> order) {
        List<String> lengths = new ArrayList<>();
        int first = 0;
        for (int end = 1; end <= order.size(); end++) {
            if (end == order.size() || !order.get(end).equals(order.get(first))) {
                lengths.add(end - first + " " + order.get(first));
                first = end;
            }
        }
        return String.join(", ", lengths);
    }
}
