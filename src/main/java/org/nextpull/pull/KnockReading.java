package org.nextpull.pull;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.channel.SamplesBuilder;

/** What the knock channels say row by row. A value that cannot be is no value: it is neither knock nor silence. */
public final class KnockReading {
    /** Combustions that one row can hold: one a second of an engine with 12 cylinders at 10,000 rpm. */
    private static final double MOST_EVENTS = 1000;

    /** A level has any scale; beyond this it is a fault code, as is one below zero. */
    private static final double MOST_LEVEL = 1e6;

    private final Samples samples;
    private final List<Channel> counters;
    private final List<Channel> levels;

    private KnockReading(Samples samples) {
        this.samples = samples;
        this.counters = channels(samples, Role.KNOCK_EVENTS);
        this.levels = channels(samples, Role.KNOCK_LEVEL);
    }

    public static KnockReading of(Samples samples) {
        return new KnockReading(samples);
    }

    /** Those rows of samples in which there is knock. */
    public static Samples rows(Samples samples, OptionalDouble mostLevel) {
        KnockReading reading = of(samples);
        SamplesBuilder builder = Samples.builder(samples.channels());
        for (int row = 0; row < samples.rows(); row++) {
            if (reading.knocks(row, mostLevel) > 0) {
                builder.appendRow(samples, row);
            }
        }
        return builder.build();
    }

    private static List<Channel> channels(Samples samples, Role role) {
        return samples.channels().stream()
                .filter(channel -> channel.role() == role)
                .toList();
    }

    /** Events of a row over all counters; empty where none of them reads. */
    public OptionalDouble events(int row) {
        double sum = 0;
        boolean reads = false;
        for (Channel counter : counters) {
            OptionalDouble count = value(counter, row);
            sum += count.orElse(0);
            reads |= count.isPresent();
        }
        return reads ? OptionalDouble.of(sum) : OptionalDouble.empty();
    }

    /** The highest level of a row over all sensors; empty where none of them reads. */
    public OptionalDouble level(int row) {
        OptionalDouble highest = OptionalDouble.empty();
        for (Channel sensor : levels) {
            OptionalDouble level = value(sensor, row);
            boolean isHigher = level.isPresent() && (highest.isEmpty() || level.getAsDouble() > highest.getAsDouble());
            highest = isHigher ? level : highest;
        }
        return highest;
    }

    /**
     * Knock in a row: the events counted, or one where the level is above its limit.
     *
     * @param mostLevel the plan's limit of the level; without it a level says nothing
     */
    public double knocks(int row, OptionalDouble mostLevel) {
        double events = events(row).orElse(0);
        return events > 0 ? events : isLoud(row, mostLevel) ? 1 : 0;
    }

    /** The first row from there on in which there may be knock, at the latest an end: a look at whole columns. */
    int silentUntil(int first, int end, OptionalDouble mostLevel) {
        int silent = end;
        for (Channel channel : channels(mostLevel)) {
            double most = channel.role() == Role.KNOCK_EVENTS ? 0 : mostLevel.orElse(0);
            Samples.Cells cells = samples.cells(channel);
            int row = first;
            while (row < silent && !(cells.isPresent(row) && cells.value(row) > most)) {
                row++;
            }
            silent = row;
        }
        return silent;
    }

    private boolean isLoud(int row, OptionalDouble mostLevel) {
        return mostLevel.isPresent() && level(row).orElse(0) > mostLevel.getAsDouble();
    }

    /** The channel that shows the knock of a row: the counter that counted most, else a level. */
    public Channel loudest(int row) {
        Channel loudest =
                Stream.concat(counters.stream(), levels.stream()).findFirst().orElse(Channel.of(Role.KNOCK_EVENTS));
        double most = 0;
        for (Channel counter : counters) {
            double count = value(counter, row).orElse(0);
            if (count > most) {
                most = count;
                loudest = counter;
            }
        }
        return most > 0 || levels.isEmpty() ? loudest : levels.get(0);
    }

    /** The channels that tell of knock: counters, and levels where the plan limits them. */
    public List<Channel> channels(OptionalDouble mostLevel) {
        return mostLevel.isPresent()
                ? Stream.concat(counters.stream(), levels.stream()).toList()
                : counters;
    }

    /** A value of a knock channel; empty where it is absent or cannot be. */
    public OptionalDouble value(Channel channel, int row) {
        OptionalDouble value = samples.find(channel, row);
        double most = channel.role() == Role.KNOCK_EVENTS ? MOST_EVENTS : MOST_LEVEL;
        return value.isPresent() && value.getAsDouble() >= 0 && value.getAsDouble() <= most
                ? value
                : OptionalDouble.empty();
    }
}
