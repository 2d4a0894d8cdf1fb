package examples;

import java.io.PrintStream;
import java.util.List;
import org.nextpull.api.LabelDifference;
import org.nextpull.finding.Outcome;

/** Compares two air boxes, run in turn. The numbers are invented. */
public final class LabelsInTurn {
    private LabelsInTurn() {}

    /** Writes the difference. */
    public static void show(PrintStream out) {
        List<String> labels = List.of("old", "new", "new", "old", "old", "new", "new", "old");
        double[] torqueNm = {181.2, 183.4, 183.1, 180.9, 181.0, 183.0, 182.8, 180.6};

        Outcome<List<LabelDifference>> compared = LabelDifference.of(labels, torqueNm, "old", 0.5);
        for (LabelDifference one : compared.value().orElseThrow()) {
            out.printf(
                    "%s: %+.2f %%, 95 %% from %+.2f to %+.2f: %s%n",
                    one.label(),
                    one.percent(),
                    one.interval().low(),
                    one.interval().high(),
                    one.verdict().id());
        }
    }
}
