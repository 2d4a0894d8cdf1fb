package org.nextpull.report.csv;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Samples;
import org.nextpull.pull.Candidate;
import org.nextpull.session.SourcePulls;

/** The kept samples of a day as a log: a column a channel with its unit, a row a sample, every digit. */
public final class SamplesCsv {
    private SamplesCsv() {}

    /** All pulls one after the other, or one of them, by its number over the day. */
    public static String of(List<SourcePulls> sources, Optional<Integer> pull) {
        List<Candidate> all =
                sources.stream().flatMap(source -> source.candidates().stream()).toList();
        Set<Channel> channels = new LinkedHashSet<>();
        all.forEach(candidate -> channels.addAll(candidate.samples().channels()));
        List<String> header = new ArrayList<>(List.of("pull", "source", "line"));
        channels.forEach(channel ->
                header.add(channel.id() + " [" + channel.role().quantity().si() + "]"));
        header.addAll(List.of("label", "fuel"));
        StringBuilder text = new StringBuilder(CsvLine.of(header));
        for (int index = 0; index < all.size(); index++) {
            if (pull.isEmpty() || pull.get() == index + 1) {
                rows(all.get(index), index + 1, channels, text);
            }
        }
        return text.toString();
    }

    private static void rows(Candidate candidate, int number, Set<Channel> channels, StringBuilder text) {
        Samples samples = candidate.samples();
        for (int row = 0; row < samples.rows(); row++) {
            List<String> cells =
                    new ArrayList<>(List.of(String.valueOf(number), candidate.source(), "" + samples.line(row)));
            for (Channel channel : channels) {
                OptionalDouble value = samples.find(channel, row);
                cells.add(value.isPresent() ? Double.toString(value.getAsDouble()) : "");
            }
            cells.add(samples.label(row).orElse(""));
            cells.add(samples.fuel(row).orElse(""));
            text.append(CsvLine.of(cells));
        }
    }
}
