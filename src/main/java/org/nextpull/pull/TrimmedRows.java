package org.nextpull.pull;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.channel.SamplesBuilder;

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
        SamplesBuilder builder = Samples.builder(all.channels());
        List<RowRange> ranges = new ArrayList<>();
        int spikes = 0;
        for (TracePoints part : parts) {
            int first = builder.rows();
            for (int row = trace.row(part.first()); row <= trace.row(part.last()); row++) {
                if (Arrays.binarySearch(spikeRows, row) >= 0) {
                    spikes++;
                } else {
                    builder.appendRow(all, row);
                }
            }
            ranges.add(new RowRange(first, builder.rows()));
        }
        Samples samples = builder.build();
        return new TrimmedRows(lambdaDelayS > 0 ? late(samples, all, lambdaDelayS) : samples, ranges, spikes);
    }

    private static Samples late(Samples rows, Samples all, double delayS) {
        Samples late = rows;
        for (Channel channel : all.channels()) {
            if (channel.role() == Role.LAMBDA || channel.role() == Role.AIR_FUEL_RATIO) {
                Timed lagging = Timed.of(all, channel);
                late = late.reread(channel, row -> lagging.at(rows.value(RowRef.TIME, row) + delayS));
            }
        }
        return late;
    }
}
