package org.nextpull.report.text;

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
                .append(" of 100 days.\n");
        text.append(blocks(advice.blocks()));
        text.append(
                advice.cautious().isPresent()
                        ? "The scatter itself is only known so well: "
                                + advice.cautious().getAsInt()
                                + " pulls there and back suffice even at the upper end of what it may be."
                        : "The scatter itself is only known so well: at the upper end of what it may be, the wish is out of reach.");
        return text.toString();
    }

    private static String blocks(Optional<PullPlan> blocks) {
        return blocks.map(plan -> "One label after the other would take " + plan.pulls()
                        + " pulls, since the slow change of the day then hides in the difference.\n")
                .orElse(
                        "One label after the other is out of reach: the slow change of the day then hides in the difference.\n");
    }
}
