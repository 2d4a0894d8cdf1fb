package org.nextpull.window.start;

import java.util.List;

/**
 * What arrives, before anything is recorded.
 *
 * @param sources the ports, or the folder
 * @param said what the sources had to say, the latest last
 */
record ArrivalsPage(List<Source> sources, List<FormPage.Said> said) {
    ArrivalsPage {
        sources = List.copyOf(sources);
        said = List.copyOf(said);
    }

    static ArrivalsPage none() {
        return new ArrivalsPage(List.of(), List.of());
    }

    /**
     * One source.
     *
     * @param name port or folder
     * @param isGood whether values arrive
     * @param state how it is doing, a sentence
     * @param raw the last line as it came
     * @param columns how its columns are understood
     */
    record Source(String name, boolean isGood, String state, String raw, List<Column> columns) {
        Source {
            columns = List.copyOf(columns);
        }
    }

    /**
     * One column.
     *
     * @param header as it was sent
     * @param meaning what it is taken for; blank where it is not understood
     * @param unit unit that it was sent in
     * @param value its latest value in the units that people read; blank before there is one
     */
    record Column(String header, String meaning, String unit, String value) {
        boolean isUnderstood() {
            return !meaning.isEmpty();
        }
    }

    /** Whether values that are understood arrive from every source. */
    boolean isGood() {
        return !sources.isEmpty() && sources.stream().allMatch(Source::isGood);
    }
}
