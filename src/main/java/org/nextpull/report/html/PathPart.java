package org.nextpull.report.html;

import java.util.ArrayList;
import java.util.List;
import org.nextpull.advice.Advice;
import org.nextpull.report.AdviceText;
import org.nextpull.report.PullColumn;
import org.nextpull.report.Shown;
import org.nextpull.report.StopText;
import org.nextpull.response.Figures;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.Replay;
import org.nextpull.unit.Quantity;

/** How the answer was found: what each pull gave, and what it led to. */
final class PathPart {
    private final Replay replay;
    private final Shown shown;
    private final AdviceText words;

    PathPart(Replay replay, Shown shown) {
        this.replay = replay;
        this.shown = shown;
        this.words = new AdviceText(shown);
    }

    Section section() {
        List<String> steps = new ArrayList<>();
        for (Replay.Step step : replay.steps()) {
            Advice advice = step.verdict().advice();
            steps.add(ran(step.pull()) + " " + words.headline(advice));
        }
        return Section.of("How it was found, pull by pull")
                .withParagraphs(
                        steps.isEmpty()
                                ? List.of()
                                : List.of("What each pull led to; the reasons stand in the JSON file beside the sheet. "
                                        + StopText.of(replay)))
                .withItems(steps);
    }

    private String ran(MeasuredPull pull) {
        String setting = AdviceText.setting(pull.setting());
        String torque = pull.figures()
                .flatMap(Figures::meanTorque)
                .map(value -> ", " + shown.value(Quantity.TORQUE, value.newtonMetres()))
                .orElse("");
        String use = pull.isUsed() ? "" : ", " + PullColumn.status(pull);
        return "Pull " + pull.number() + (setting.isEmpty() ? "" : ": " + setting) + torque + use + ".";
    }
}
