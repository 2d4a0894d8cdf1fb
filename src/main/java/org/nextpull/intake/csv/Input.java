package org.nextpull.intake.csv;

import java.util.List;
import org.nextpull.channel.Recording;
import org.nextpull.channel.ResultTable;
import org.nextpull.channel.SourceDescription;
import org.nextpull.finding.Finding;

/** One usable source, told apart by its content. */
public sealed interface Input {
    /** As the user named it. */
    String name();

    /**
     * Samples over time.
     *
     * @param recording reads it; its readers' findings hold everything that was found, on columns and on rows
     * @param description how its columns were understood
     */
    record Log(Recording recording, SourceDescription description) implements Input {
        @Override
        public String name() {
            return recording.name();
        }
    }

    /**
     * One row a pull.
     *
     * @param table the rows
     * @param findings what was found on the way
     */
    record Table(ResultTable table, List<Finding> findings) implements Input {
        public Table {
            findings = List.copyOf(findings);
        }

        @Override
        public String name() {
            return table.description().name();
        }
    }
}
