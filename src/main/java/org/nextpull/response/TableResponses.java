package org.nextpull.response;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.alarm.ChannelLife;
import org.nextpull.channel.Channel;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.ResultTable;
import org.nextpull.plan.Limit;
import org.nextpull.plan.SweepPlan;

/** Turns the rows of a table of results into pulls: its figures are taken as they are, corrected or not, by whoever made the table. */
public final class TableResponses {
    private TableResponses() {}

    /**
     * The rows of a table as pulls, in the order of the day.
     *
     * @param table the table
     * @param plan the plan, whose limits a table shows nothing of but for lambda
     * @param firstNumber number of the first pull over the whole day
     */
    public static List<MeasuredPull> of(ResultTable table, SweepPlan plan, int firstNumber) {
        List<MeasuredPull> pulls = new ArrayList<>();
        for (ResultTable.Row row : table.rows()) {
            int place = pulls.size();
            EngineSetting set = EngineSetting.ofNumbers(row.advance(), Optional.empty(), row.lambda());
            pulls.add(new MeasuredPull(
                    firstNumber + place,
                    new MeasuredPull.Origin(table.description().name(), row.line(), place + 1),
                    row.order().isPresent() ? row.order().getAsInt() - 1.0 : firstNumber - 1.0 + place,
                    set.fitted(row.label(), row.fuel()),
                    set,
                    row.used() ? MeasuredPull.Status.USED : MeasuredPull.Status.STRUCK,
                    Optional.empty(),
                    figures(row),
                    KnockHeard.marked(row.knock()),
                    row.lambda(),
                    Conditions.unknown(),
                    List.of(),
                    unwatched(row, plan),
                    List.of()));
        }
        return List.copyOf(pulls);
    }

    private static List<MeasuredPull.Unwatched> unwatched(ResultTable.Row row, SweepPlan plan) {
        return plan.watched().stream()
                .filter(limit -> limit != Limit.KNOCK && limit != Limit.SPEED)
                .filter(limit -> limit != Limit.LEAN || row.lambda().isEmpty())
                .map(limit -> new MeasuredPull.Unwatched(limit, Channel.of(limit.role()), ChannelLife.Life.NOT_LOGGED))
                .toList();
    }

    private static Optional<Figures> figures(ResultTable.Row row) {
        return row.torque().isEmpty() && row.power().isEmpty()
                ? Optional.empty()
                : Optional.of(new Figures(
                        row.torque(),
                        row.power(),
                        OptionalDouble.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        List.of()));
    }
}
