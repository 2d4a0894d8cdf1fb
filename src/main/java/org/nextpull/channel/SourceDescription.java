package org.nextpull.channel;

import java.util.List;
import java.util.Optional;
import org.nextpull.unit.Unit;

/**
 * How a source of samples was understood.
 *
 * @param name as the user gave it
 * @param encoding character set, {@code UTF-8} for one that needs none
 * @param separator the field separator: {@code ,} {@code ;} {@code \t} or a blank; empty where there are no fields
 * @param decimal the decimal mark
 * @param columns the columns in the order of the source
 */
public record SourceDescription(String name, String encoding, String separator, char decimal, List<Column> columns) {
    public SourceDescription {
        columns = List.copyOf(columns);
    }

    /**
     * How a column of the source was understood.
     *
     * @param header its header as written
     * @param channel what it means; empty when the tool has no use for it
     * @param unit the unit that it was written in; empty for words and unused columns
     */
    public record Column(String header, Optional<Channel> channel, Optional<Unit> unit) {}
}
