package org.nextpull.intake;

import java.util.List;
import java.util.Optional;
import org.nextpull.finding.Place;

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

    /** The header as a place of the source. */
    Place place(String header) {
        return Place.atLine(name, headerLine).withKey(header);
    }

    /** The unit that a row below the header gives for a column; empty where there is no such row or cell. */
    Optional<String> rowUnit(int index) {
        return index < units.size() ? Optional.of(units.get(index)) : Optional.empty();
    }
}
