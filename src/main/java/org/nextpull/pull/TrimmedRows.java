package org.nextpull.pull;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;

/**
 * The rows of a candidate: its parts of the stretch without impossible speeds, lambda read as much later as its sensor lags.
 *
 * @param samples the rows
 * @param parts the parts as rows of the samples
 * @param spikes rows left out for their speed
 */
record TrimmedRows(Samples samples, List<RowRange> parts, int spikes) {
    TrimmedRows {
        parts = List.copyOf(parts);
    }

    static TrimmedRows of(Samples all, SpeedTrace trace, List<TracePoints> parts, double lambdaDelayS) {
        int[] spikeRows = trace.spikeRows();
        Map<Channel, Timed> late = new HashMap<>();
        if (lambdaDelayS > 0) {
            all.channels().stream()
                    .filter(channel -> channel.role() == Role.LAMBDA || channel.role() == Role.AIR_FUEL_RATIO)
                    .forEach(channel -> late.put(channel, Timed.of(all, channel)));
        }
        Samples.Builder builder = Samples.builder(all.channels());
        List<RowRange> ranges = new ArrayList<>();
        int spikes = 0;
        for (TracePoints part : parts) {
            int first = builder.rows();
            for (int row = trace.row(part.first()); row <= trace.row(part.last()); row++) {
                if (Arrays.binarySearch(spikeRows, row) >= 0) {
                    spikes++;
                } else {
                    append(builder, all, row, late, lambdaDelayS);
                }
            }
            ranges.add(new RowRange(first, builder.rows()));
        }
        return new TrimmedRows(builder.build(), ranges, spikes);
    }

    private static void append(Samples.Builder builder, Samples all, int row, Map<Channel, Timed> late, double delayS) {
        builder.row(all.line(row), all.label(row), all.fuel(row));
        for (Channel channel : all.channels()) {
            if (!all.isPresent(channel, row)) {
                continue;
            }
            Timed lagging = late.get(channel);
            if (lagging == null) {
                builder.set(channel, all.value(channel, row));
            } else {
                lagging.at(all.value(RowRef.TIME, row) + delayS).ifPresent(value -> builder.set(channel, value));
            }
        }
    }
}
