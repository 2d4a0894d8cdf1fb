package org.nextpull.report.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.nextpull.report.FindingLines;
import org.nextpull.report.FindingText;
import org.nextpull.report.Shown;
import org.nextpull.session.SessionResult;

/** What the operator changed by hand, and what is wrong or worth saying. */
final class RemarksPart {
    private final SessionResult result;
    private final FindingText sentences;

    RemarksPart(SessionResult result, Shown shown) {
        this.result = result;
        this.sentences = FindingText.in(shown);
    }

    Section changes() {
        List<String> changes = new ArrayList<>();
        Map<Integer, String> struck = new TreeMap<>(result.amendments().struck());
        struck.forEach((pull, reason) -> changes.add(
                "Pull " + pull + " was excluded: " + (reason.isBlank() ? "no reason was given" : reason) + "."));
        new TreeSet<>(result.amendments().lifted())
                .forEach(pull -> changes.add("Knock and limits of pull " + pull
                        + " were overridden by the operator: they no longer block any setting."));
        new TreeSet<>(result.amendments().corrected().keySet())
                .forEach(pull -> changes.add("The setting of pull " + pull + " was corrected by the operator."));
        return Section.of("Operator changes").withItems(changes);
    }

    Section findings() {
        return Section.of("Findings").withItems(new FindingLines(sentences).lines(result.found()));
    }
}
