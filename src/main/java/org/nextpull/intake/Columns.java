package org.nextpull.intake;

import java.util.List;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.SourceDescription;
import org.nextpull.finding.Finding;

/**
 * The columns of a source, understood.
 *
 * @param mapped columns that are read, in the order of the source
 * @param described every column of the source, read or not
 * @param findings what was assumed, doubted or left out
 */
public record Columns(List<MappedColumn> mapped, List<SourceDescription.Column> described, List<Finding> findings) {
    public Columns {
        mapped = List.copyOf(mapped);
        described = List.copyOf(described);
        findings = List.copyOf(findings);
    }

    public boolean has(Role role) {
        return mapped.stream().anyMatch(column -> column.channel().role() == role);
    }

    /** The channels that hold numbers. */
    List<Channel> numericChannels() {
        return mapped.stream()
                .map(MappedColumn::channel)
                .filter(channel -> !channel.role().isText())
                .toList();
    }
}
