package org.nextpull.channel;

import java.util.List;

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
}
