package org.nextpull.intake;

import java.util.List;

/**
 * The columns of a source as they stand, before anything is understood.
 *
 * @param name name of the source, for findings
 * @param headerLine line of the header, from 1
 * @param headers one a column
 * @param units cells of the units row; empty where there is none
 * @param probes one a column: what its first rows hold
 */
public record ColumnTable(
        String name, long headerLine, List<String> headers, List<String> units, List<ProbeColumn> probes) {
    /**
     * Accepts as many probes as headers.
     *
     * @throws IllegalArgumentException when their numbers differ
     */
    public ColumnTable {
        headers = List.copyOf(headers);
        units = List.copyOf(units);
        probes = List.copyOf(probes);
        if (headers.size() != probes.size()) {
            throw new IllegalArgumentException("a probe for each column: " + headers.size() + ", " + probes.size());
        }
    }
}
