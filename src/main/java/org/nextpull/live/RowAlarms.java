package org.nextpull.live;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.nextpull.alarm.Alarm;
import org.nextpull.alarm.AlarmWatch;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.channel.SamplesBuilder;

/**
 * The alarms that reach the operator: looks at the rows of each source as they come, without waiting for those of others. What belongs
 * to a pull is judged by the merged rows instead. Sources report at different delays, so here a row counts as coming after the one
 * before, whatever its time; a channel that two sources send is two sensors.
 */
final class RowAlarms {
    private static final Channel TIME = Channel.of(Role.TIME);

    private final boolean single;
    private final Map<Channel, String> owners = new HashMap<>();
    private final Map<String, Map<Channel, Channel>> names = new HashMap<>();
    private AlarmWatch.Rules rules;
    private AlarmWatch watch;
    private double lastS = Double.NEGATIVE_INFINITY;

    RowAlarms(int sources, AlarmWatch.Rules rules) {
        this.single = sources <= 1;
        this.rules = rules;
        this.watch = new AlarmWatch(rules);
    }

    List<Alarm.Event> take(String source, Samples samples) {
        return watch.take(single ? samples : inOneRow(source, samples));
    }

    void limits(AlarmWatch.Rules newRules) {
        rules = newRules;
        watch = watch.withLimits(newRules.limits());
    }

    /** What was known of the engine does not hold any more: a source went away, or another recording begins. */
    void restart() {
        watch = new AlarmWatch(rules);
        lastS = Double.NEGATIVE_INFINITY;
    }

    List<Alarm.Headroom> headroom() {
        return watch.headroom();
    }

    List<Alarm> sounding() {
        return watch.sounding();
    }

    private Samples inOneRow(String source, Samples samples) {
        Map<Channel, Channel> known = names.computeIfAbsent(source, name -> new HashMap<>());
        List<Channel> channels = samples.channels().stream()
                .map(channel -> known.computeIfAbsent(channel, each -> own(source, each)))
                .toList();
        SamplesBuilder builder = Samples.builder(channels);
        for (int row = 0; row < samples.rows(); row++) {
            builder.row(samples.line(row), samples.label(row), samples.fuel(row));
            for (int index = 0; index < channels.size(); index++) {
                Channel channel = samples.channels().get(index);
                OptionalDouble value = samples.find(channel, row);
                if (value.isPresent()) {
                    builder.set(index, channel.equals(TIME) ? later(value.getAsDouble()) : value.getAsDouble());
                }
            }
        }
        return builder.build();
    }

    private double later(double timeS) {
        lastS = Math.max(lastS, timeS);
        return lastS;
    }

    private Channel own(String source, Channel channel) {
        if (channel.equals(TIME)) {
            return TIME;
        }
        Channel free = channel;
        while (owners.containsKey(free)) {
            free = new Channel(channel.role(), free.sensor() + 1);
        }
        owners.put(free, source);
        return free;
    }
}
