package org.nextpull.report.html;

import java.util.List;
import org.nextpull.plan.text.PlanWriter;
import org.nextpull.session.SessionResult;

/** What another shop needs to run the same again. */
final class RepeatPart {
    private final SessionResult result;

    RepeatPart(SessionResult result) {
        this.result = result;
    }

    Section section() {
        return Section.of("To repeat this elsewhere")
                .withParagraphs(List.of(
                        "Run the engine on the same fuel, hold the start conditions of the plan, remake each setting before a repeat, "
                                + "and correct to the same standard. Figures at the wheel or the roller hold for that dyno, gear and "
                                + "tyre only. The plan below is the whole of what was asked; with it and the logs the program gives "
                                + "this sheet again."))
                .withVerbatim(PlanWriter.write(result.plan()));
    }
}
