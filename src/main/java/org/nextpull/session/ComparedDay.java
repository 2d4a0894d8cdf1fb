package org.nextpull.session;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.ResultTable;
import org.nextpull.compare.ComparisonRequest;
import org.nextpull.compare.MeasuredComparison;
import org.nextpull.finding.Outcome;
import org.nextpull.plan.Goal;
import org.nextpull.response.MeasuredPull;

/**
 * The comparison of a day's labels.
 *
 * @param orderFrom where the order of the pulls comes from
 * @param pulls the pulls with their labels, in that order
 * @param outcome the comparison, or why there is none
 */
public record ComparedDay(OrderFrom orderFrom, List<MeasuredPull> pulls, Outcome<MeasuredComparison> outcome) {
    public ComparedDay {
        pulls = List.copyOf(pulls);
    }

    /** Where the order of the pulls comes from. */
    public enum OrderFrom {
        /** An order column of the settings file or of a table. */
        ORDER_COLUMN,
        /** The order in which files were named and pulls stand in them. */
        COMMAND_LINE;

        /** As JSON writes it: {@code order-column}. */
        public String id() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /**
     * Compares.
     *
     * @param input what the day is made from, for its order
     * @param result the day
     * @param labels label of each source that was named with one
     * @param request what is asked
     */
    public static ComparedDay of(
            SessionInput input, SessionResult result, Map<String, String> labels, ComparisonRequest request) {
        List<MeasuredPull> pulls =
                result.pulls().stream().map(pull -> labelled(pull, labels)).toList();
        MeasuredComparison.Response response = result.plan().goal().response() == Goal.Response.POWER
                ? MeasuredComparison.Response.POWER
                : MeasuredComparison.Response.TORQUE;
        return new ComparedDay(orderFrom(input), pulls, MeasuredComparison.of(pulls, request, response));
    }

    private static MeasuredPull labelled(MeasuredPull pull, Map<String, String> labels) {
        return Optional.ofNullable(labels.get(pull.origin().source()))
                .map(pull::withLabel)
                .orElse(pull);
    }

    private static OrderFrom orderFrom(SessionInput input) {
        boolean settings = input.settings().stream().map(AskedSetting::order).anyMatch(order -> order.isPresent());
        boolean tables = input.tables().stream()
                .map(ResultTable::rows)
                .flatMap(List::stream)
                .anyMatch(row -> row.order().isPresent());
        return settings || tables ? OrderFrom.ORDER_COLUMN : OrderFrom.COMMAND_LINE;
    }
}
