package org.nextpull.alarm;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.channel.SamplesBuilder;

/** Rows for tests: one function of the row number for each channel; a value that is no number is an empty cell. */
final class Rows {
    private static final int FIRST_LINE = 2;

    private final int rows;
    private final List<Channel> channels = new ArrayList<>();
    private final List<IntToDoubleFunction> values = new ArrayList<>();

    private Rows(int rows) {
        this.rows = rows;
    }

    /** Rows at full throttle, a tenth of a second apart, from 3000 rpm up by 100 rpm a row. */
    static Rows ofPull(int rows) {
        return bare(rows).with(Role.THROTTLE, row -> 1).with(Role.ENGINE_SPEED, row -> 3000 + 100.0 * row);
    }

    /** Rows with the time alone. */
    static Rows bare(int rows) {
        return new Rows(rows).with(Role.TIME, row -> row / 10.0);
    }

    static Rows withoutTime(int rows) {
        return new Rows(rows);
    }

    Rows with(Role role, IntToDoubleFunction value) {
        return with(Channel.of(role), value);
    }

    Rows with(Channel channel, IntToDoubleFunction value) {
        int known = channels.indexOf(channel);
        if (known >= 0) {
            values.set(known, value);
        } else {
            channels.add(channel);
            values.add(value);
        }
        return this;
    }

    Samples samples() {
        SamplesBuilder builder = Samples.builder(channels);
        for (int row = 0; row < rows; row++) {
            builder.row(row + FIRST_LINE);
            for (int index = 0; index < channels.size(); index++) {
                double value = values.get(index).applyAsDouble(row);
                if (Double.isFinite(value)) {
                    builder.set(index, value);
                }
            }
        }
        return builder.build();
    }
}
