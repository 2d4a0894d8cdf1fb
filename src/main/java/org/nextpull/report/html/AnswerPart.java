package org.nextpull.report.html;

import java.util.ArrayList;
import java.util.List;
import org.nextpull.advice.Action;
import org.nextpull.advice.Advice;
import org.nextpull.advice.SweepAnswer;
import org.nextpull.advice.Verdict;
import org.nextpull.channel.EngineSetting;
import org.nextpull.report.AdviceText;
import org.nextpull.report.AnswerText;
import org.nextpull.report.CandidateWords;
import org.nextpull.report.MapText;
import org.nextpull.report.Shown;
import org.nextpull.session.SessionResult;

/** Why the day ended or goes on, what was fitted, and how sure that is. */
final class AnswerPart {
    private final SessionResult result;
    private final Shown shown;
    private final AdviceText words;
    private final AnswerText answers;

    AnswerPart(SessionResult result, Shown shown) {
        this.result = result;
        this.shown = shown;
        this.words = new AdviceText(shown);
        this.answers = new AnswerText(shown);
    }

    Section section() {
        List<String> sentences = new ArrayList<>();
        result.verdict().ifPresent(verdict -> say(verdict, sentences));
        sentences.add(answers.repeatability(result));
        return Section.of("The answer in full").withParagraphs(sentences);
    }

    private void say(Verdict verdict, List<String> sentences) {
        Advice advice = verdict.advice();
        sentences.add(
                advice.action() == Action.STOP
                        ? "The day has ended. " + words.because(advice)
                        : "The day has not ended. " + words.headline(advice) + ". " + words.because(advice));
        advice.setting()
                .flatMap(EngineSetting::map)
                .ifPresent(map -> sentences.add("The next map: " + MapText.cells(map) + "."));
        result.candidates()
                .ifPresentOrElse(
                        day -> sentences.addAll(
                                new CandidateWords(day, result.plan().goal().response(), shown).sweeps(result)),
                        () -> fitted(verdict, sentences));
    }

    private void fitted(Verdict verdict, List<String> sentences) {
        verdict.map().map(MapText::standing).ifPresent(sentences::add);
        verdict.timing().map(answer -> answers.timing(result, answer)).ifPresent(sentences::add);
        verdict.timing().flatMap(answer -> answers.knockLimit(result, answer)).ifPresent(sentences::add);
        verdict.timing().flatMap(SweepAnswer::mapGain).map(MapText::wouldGain).ifPresent(sentences::add);
        verdict.mixture().ifPresent(answer -> {
            sentences.add(answers.mixture(answer));
            String edges = answers.edges(result, answer);
            if (!edges.isEmpty()) {
                sentences.add("Mixture sweep: " + edges + ".");
            }
        });
        sentences.addAll(answers.moved(verdict));
    }
}
