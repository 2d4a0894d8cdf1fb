package org.nextpull.report.html;

import java.util.ArrayList;
import java.util.List;
import org.nextpull.advice.Action;
import org.nextpull.advice.Advice;
import org.nextpull.advice.Proposal;
import org.nextpull.advice.SweepAnswer;
import org.nextpull.advice.Verdict;
import org.nextpull.report.AdviceText;
import org.nextpull.report.AnswerText;
import org.nextpull.report.KnockText;
import org.nextpull.report.MapText;
import org.nextpull.report.Shown;
import org.nextpull.report.WatchText;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.SessionResult;

/** What to leave in the engine, why, and how sure that is. */
final class AnswerPart {
    private final SessionResult result;
    private final AdviceText words;
    private final AnswerText answers;
    private final List<String> verdictsOnLabels;

    AnswerPart(SessionResult result, List<String> verdictsOnLabels, Shown shown) {
        this.result = result;
        this.verdictsOnLabels = verdictsOnLabels;
        this.words = new AdviceText(shown);
        this.answers = new AnswerText(shown);
    }

    Section section() {
        List<String> sentences = new ArrayList<>();
        WatchText.of(result).ifPresent(sentences::add);
        result.verdict().ifPresent(verdict -> say(verdict, sentences));
        sentences.addAll(verdictsOnLabels);
        if (result.verdict().isEmpty() && verdictsOnLabels.isEmpty()) {
            sentences.add(
                    result.pulls().stream().anyMatch(MeasuredPull::isUsed)
                            ? "No setting is advised: the plan sweeps nothing, or the remarks name what hinders it."
                            : "No pull could be used, so there is no answer.");
        }
        sentences.add(answers.repeatability(result));
        return Section.of("Result").withParagraphs(sentences);
    }

    private void say(Verdict verdict, List<String> sentences) {
        Advice advice = verdict.advice();
        if (advice.action() == Action.STOP) {
            sentences.addAll(KnockText.leading(result));
        }
        verdict.chosen().map(words::leave).ifPresent(sentences::add);
        verdict.chosen()
                .flatMap(chosen -> chosen.setting().map())
                .ifPresent(map -> sentences.add("That map: " + MapText.cells(map) + "."));
        sentences.add(
                advice.action() == Action.STOP
                        ? "The day has ended. " + words.because(advice)
                        : "The day has not ended. " + words.headline(advice) + ". " + words.because(advice));
        advice.setting()
                .flatMap(Proposal::map)
                .ifPresent(map -> sentences.add("The next map: " + MapText.cells(map) + "."));
        verdict.map().map(MapText::standing).ifPresent(sentences::add);
        verdict.timing().map(answer -> answers.timing(result, answer)).ifPresent(sentences::add);
        verdict.timing().flatMap(answer -> answers.knockLimit(result, answer)).ifPresent(sentences::add);
        verdict.timing().flatMap(SweepAnswer::mapGain).map(MapText::wouldGain).ifPresent(sentences::add);
        verdict.mixture().ifPresent(answer -> {
            sentences.add(answers.mixture(answer));
            String edges = answers.edges(result, answer);
            if (!edges.isEmpty()) {
                sentences.add("Mixture: " + edges + ".");
            }
        });
        sentences.addAll(answers.moved(verdict));
    }
}
