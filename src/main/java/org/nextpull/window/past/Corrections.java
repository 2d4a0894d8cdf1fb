package org.nextpull.window.past;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.nextpull.channel.AskedSetting;
import org.nextpull.report.EntryText;
import org.nextpull.session.OperatorAction;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.window.page.FieldNumber;
import org.nextpull.window.page.Question;

/** The question what a pull of a session was really run with; what is left empty stays as it is. */
final class Corrections {
    private Corrections() {}

    /**
     * The question.
     *
     * @param take is given what was said; answers with what is wrong with it
     */
    static Question question(long session, Function<OperatorAction.Correct, Optional<String>> take) {
        return new Question(
                "A pull of session " + session + " was run with:",
                List.of(
                        Question.Field.narrow("Pull", ""),
                        Question.Field.narrow("Advance", ""),
                        Question.Field.narrow("Lambda", ""),
                        Question.Field.narrow("Label", ""),
                        Question.Field.narrow("Fuel", "")),
                texts -> corrected(texts, take));
    }

    private static Optional<String> corrected(
            List<String> texts, Function<OperatorAction.Correct, Optional<String>> take) {
        String pull = texts.get(0).strip();
        FieldNumber advance = FieldNumber.of("Advance", texts.get(1));
        FieldNumber lambda = FieldNumber.of("Lambda", texts.get(2));
        if (!pull.matches("[0-9]{1,6}")) {
            return Optional.of(EntryText.noWord("Pull", "the number of a pull"));
        }
        Optional<String> fault = advance.fault().or(lambda::fault);
        if (fault.isPresent()) {
            return fault;
        }
        if (lambda.value().filter(value -> value <= 0).isPresent()) {
            return Optional.of(EntryText.noWord("Lambda", "a number above 0"));
        }
        AskedSetting setting = AskedSetting.none()
                .withValues(
                        advance.value().map(Advance::ofDeg),
                        Optional.empty(),
                        lambda.value().map(Lambda::of))
                .withConfiguration(word(texts.get(3)), word(texts.get(4)));
        return setting.equals(AskedSetting.none())
                ? Optional.of(EntryText.NOTHING_SAID)
                : take.apply(new OperatorAction.Correct(Integer.parseInt(pull), setting));
    }

    private static Optional<String> word(String text) {
        return Optional.of(text.strip()).filter(word -> !word.isEmpty());
    }
}
