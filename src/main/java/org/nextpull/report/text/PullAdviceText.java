package org.nextpull.report.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.compare.PullAdvice;
import org.nextpull.compare.PullPlan;
import org.nextpull.report.Shown;
import org.nextpull.scatter.Scatter;

/** What {@code plan-pulls} prints. */
public final class PullAdviceText {

    /** The plan for a day. */
    public String text(PullAdvice advice, Scatter scatter, double wanted) {
        String wish = "To tell " + Shown.plain(wanted) + " % at a scatter of " + Shown.plain(scatter.percent()) + " %";
        StringBuilder text = new StringBuilder();
        if (advice.interleaved().isEmpty()) {
            return text.append(wish)
                    .append(": out of reach. Even ")
                    .append(PullPlan.MOST_PULLS)
                    .append(" pulls there and back would only tell ")
                    .append(Shown.fixed(advice.resolvedByMost(), 2))
                    .append(" %. Lower the scatter first: same temperatures, same rate, the setting remade each time.")
                    .toString();
        }
        PullPlan plan = advice.interleaved().get();
        text.append(wish).append(", run ").append(plan.pulls()).append(" pulls there and back:\n  ");
        text.append(String.join(" ", plan.order())).append('\n');
        text.append("  95 % interval about +-")
                .append(Shown.fixed(plan.halfWidthPercent(), 2))
                .append(" %; such a difference is then found in ")
                .append(Shown.fixed(100 * plan.power(), 0))
                .append(" of 100 days if it is compared with --planned ")
                .append(plan.pulls())
                .append(", in ")
                .append(Shown.fixed(100 * plan.powerUnplanned(), 0))
                .append(" if nothing was planned.\n");
        text.append("In blocks: with three change-overs ")
                .append(blocks(advice.threeChangeOvers()))
                .append("; with two ")
                .append(blocks(advice.twoChangeOvers()))
                .append("; with one never, since nobody can tell then whether the label or the day has changed.\n");
        text.append(
                advice.cautious().isPresent()
                        ? "The scatter itself is only known so well: "
                                + advice.cautious().getAsInt()
                                + " pulls there and back suffice even at the upper end of what it may be."
                        : "The scatter itself is only known so well: at the upper end of what it may be, the wish is out of reach.");
        return text.toString();
    }

    private static String blocks(Optional<PullPlan> blocks) {
        return blocks.map(plan -> plan.pulls() + " pulls (" + lengths(plan.order()) + ")")
                .orElse("out of reach");
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
