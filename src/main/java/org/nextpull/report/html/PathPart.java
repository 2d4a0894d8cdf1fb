package org.nextpull.report.html;

import java.util.ArrayList;
import java.util.List;
import org.nextpull.report.AdviceText;
import org.nextpull.report.Shown;
import org.nextpull.report.StopText;
import org.nextpull.session.Replay;

/** How the answer was found: what each pull led to; what it gave stands in the table of the pulls. */
final class PathPart {
    private final Replay replay;
    private final AdviceText words;

    PathPart(Replay replay, Shown shown) {
        this.replay = replay;
        this.words = new AdviceText(shown);
    }

    Section section() {
        List<String> steps = new ArrayList<>();
        List<Replay.Step> all = replay.steps();
        int from = 0;
        for (int at = 0; at < all.size(); at++) {
            String said = words.headline(all.get(at).verdict().advice());
            boolean isLast = at + 1 == all.size()
                    || !said.equals(words.headline(all.get(at + 1).verdict().advice()));
            if (isLast) {
                int first = all.get(from).pull().number();
                int last = all.get(at).pull().number();
                steps.add((from == at ? "Pull " + first : "Pulls " + first + " to " + last) + ": " + said);
                from = at + 1;
            }
        }
        return Section.of("How it was found, pull by pull")
                .withParagraphs(
                        steps.isEmpty()
                                ? List.of()
                                : List.of("What each pull led to; the reasons stand in the JSON file beside the sheet. "
                                        + StopText.of(replay)))
                .withItems(steps);
    }
}
