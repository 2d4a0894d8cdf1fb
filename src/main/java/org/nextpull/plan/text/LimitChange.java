package org.nextpull.plan.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.nextpull.finding.Outcome;
import org.nextpull.plan.SweepPlan;

/** Changes one limit of a plan by its key, under the checks that hold for the text of a plan. */
public final class LimitChange {
    private static final String TABLE = "[limits]";

    private LimitChange() {}

    /**
     * The plan with another limit.
     *
     * @param plan the plan as it stands
     * @param key a key of the table {@code [limits]}
     * @param value in the unit of that key
     * @return the plan, or what is wrong with key or value
     */
    public static Outcome<SweepPlan> of(SweepPlan plan, String key, double value) {
        List<String> lines = new ArrayList<>();
        lines.add(TABLE);
        lines.addAll(Arrays.stream(LimitsTable.TABLE.write(plan.limits()).split("\n"))
                .filter(line -> !line.isBlank() && !line.equals(TABLE) && !line.startsWith(key + " "))
                .toList());
        lines.add(quoted(key) + " = " + number(value));
        String text = lines.stream().collect(Collectors.joining("\n", "", "\n"));
        return PlanText.read(text, TABLE).map(read -> plan.withLimits(read.limits()));
    }

    /** A bare key where it is one; anything else becomes a key that no plan has, and is named as unknown. */
    private static String quoted(String key) {
        return key.matches("[A-Za-z0-9_-]+") ? key : "'" + key.replaceAll("['\\p{Cntrl}]", "?") + "'";
    }

    private static String number(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e15
                ? String.format(Locale.ROOT, "%.0f", value)
                : Double.toString(value);
    }
}
