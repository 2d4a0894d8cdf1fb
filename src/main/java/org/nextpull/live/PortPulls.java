package org.nextpull.live;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import org.nextpull.alarm.Alarm;
import org.nextpull.alarm.AlarmWatch;
import org.nextpull.channel.Block;
import org.nextpull.channel.BlockReader;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.channel.SourceDescription;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.pull.Candidate;
import org.nextpull.pull.PullFinder;
import org.nextpull.pull.PullRules;
import org.nextpull.session.SourcePulls;

/**
 * The pulls in the merged rows of all ports. Where data stops, rows that were measured before may still come: the cut lies between the
 * rows before and after that moment, whenever they come.
 */
final class PortPulls implements DayPulls {
    private static final Channel TIME = Channel.of(Role.TIME);

    private final String name;
    private final Supplier<List<SourceDescription.Column>> columns;
    private final PullFinder finder;
    private final List<Candidate> whole = new ArrayList<>();
    private final List<Alarm> alarms = new ArrayList<>();
    private AlarmWatch watch;
    private List<Candidate> ahead = List.of();
    private boolean looked;
    private OptionalDouble cutS = OptionalDouble.empty();
    private long rows;

    /**
     * Prepares to find pulls.
     *
     * @param columns how the columns are understood at the moment
     */
    PortPulls(String name, Supplier<List<SourceDescription.Column>> columns, PullRules rules, AlarmWatch.Rules limits) {
        this.name = name;
        this.columns = columns;
        this.finder = new PullFinder(name, rules);
        this.watch = new AlarmWatch(limits);
    }

    @Override
    public void block(Block block) {
        Samples samples = block.samples();
        int row = 0;
        if (cutS.isPresent()) {
            while (row < samples.rows() && isBeforeCut(samples, row)) {
                row++;
            }
            take(row == samples.rows() ? block : new Block(samples.slice(0, row)));
            if (row < samples.rows()) {
                cutNow();
                take(new Block(samples.slice(row, samples.rows())));
            }
        } else {
            take(block);
        }
    }

    private boolean isBeforeCut(Samples samples, int row) {
        OptionalDouble time = samples.find(TIME, row);
        return time.isEmpty() || time.getAsDouble() <= cutS.getAsDouble();
    }

    private void take(Block block) {
        rows += block.samples().rows();
        keep(finder.accept(block));
        watch.take(block.samples()).stream()
                .filter(event -> event.kind() == Alarm.Event.Kind.CLEARED)
                .map(Alarm.Event::alarm)
                .forEach(alarms::add);
        if (!finder.isAhead()) {
            looked = false;
            ahead = List.of();
        } else if (!looked) {
            looked = true;
            ahead = finder.ahead();
        }
    }

    private void keep(List<Candidate> found) {
        if (!found.isEmpty()) {
            whole.addAll(found);
            ahead = List.of();
            looked = false;
        }
    }

    @Override
    public void see(Arrival arrival) {
        if (arrival instanceof Arrival.Lost) {
            if (cutS.isPresent()) {
                cutNow();
            }
            cutS = OptionalDouble.of(arrival.at().seconds());
        }
    }

    @Override
    public OptionalDouble waitingCutS() {
        return cutS;
    }

    @Override
    public void cutNow() {
        cutS = OptionalDouble.empty();
        keep(finder.cut());
        ahead = List.of();
        looked = false;
    }

    @Override
    public void limits(AlarmWatch.Rules limits) {
        alarms.addAll(watch.sounding());
        watch = watch.withLimits(limits.limits());
    }

    @Override
    public OptionalDouble loadedSinceS() {
        return finder.loadedSinceS();
    }

    @Override
    public int whole() {
        return whole.size();
    }

    @Override
    public int count() {
        return whole.size() + ahead.size();
    }

    @Override
    public List<SourcePulls> pulls() {
        if (rows == 0) {
            return List.of();
        }
        List<Candidate> all = new ArrayList<>(whole);
        all.addAll(ahead);
        List<Alarm> until = new ArrayList<>(alarms);
        until.addAll(watch.sounding());
        return List.of(new SourcePulls(
                name,
                Optional.of(new SourceDescription(name, "UTF-8", "", '.', columns.get())),
                new BlockReader.RowCount(rows, 0),
                all,
                until,
                finder.findings(),
                finder.thrownAway()));
    }
}
