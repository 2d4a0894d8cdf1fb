package org.nextpull.window.bench;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.KnockMark;
import org.nextpull.finding.Outcome;
import org.nextpull.plan.Limit;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanKeys;
import org.nextpull.report.ActText;
import org.nextpull.report.FindingText;
import org.nextpull.report.Shown;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.OperatorAction;
import org.nextpull.session.OperatorActions;
import org.nextpull.window.page.Question;

/** What the operator can change by hand, each as a question at the foot; the answer becomes an act. Knows no view. */
final class BenchQuestions {
    private static final List<String> YES = List.of("yes", "y");
    private static final List<String> NO = List.of("no", "n");

    private final Consumer<OperatorAction> tell;
    private final FindingText sentences;

    BenchQuestions(Consumer<OperatorAction> tell, Shown shown) {
        this.tell = tell;
        this.sentences = FindingText.in(shown);
    }

    Question strike(int pull) {
        return withReason("Exclude pull " + pull + "?", why -> new OperatorAction.Strike(pull, why));
    }

    Question restore(int pull) {
        return new Question("Reinstate pull " + pull + "?", List.of(), texts -> done(new OperatorAction.Restore(pull)));
    }

    Question lift(int pull) {
        return withReason(
                "Override the knock and limit blocks of pull " + pull + "? Your reason goes on the sheet.",
                why -> new OperatorAction.Lift(pull, why));
    }

    /** That the operator watches alone what no channel does. */
    Question ownWatch(List<Limit> limits) {
        if (limits.isEmpty()) {
            return new Question(
                    "Every limit of the plan was watched in the last pull.", List.of(), texts -> Optional.empty());
        }
        OperatorAction.OwnWatch watch = new OperatorAction.OwnWatch(limits);
        return new Question(
                "Say that you watch what no channel does: " + ActText.limits(watch) + "?",
                List.of(),
                texts -> done(watch));
    }

    private Question withReason(String title, java.util.function.Function<String, OperatorAction> act) {
        return new Question(
                title,
                List.of(Question.Field.wide("Why", "")),
                texts -> texts.get(0).isBlank()
                        ? Optional.of(Question.REASON_NEEDED)
                        : done(act.apply(texts.get(0).strip())));
    }

    /** A remark on a pull, or on the session without one. */
    Question note(OptionalInt pull) {
        String on = pull.isPresent() ? "pull " + pull.getAsInt() : "the session";
        return new Question(
                "Note on " + on + ".",
                List.of(Question.Field.wide("Note", "")),
                texts -> texts.get(0).isBlank()
                        ? Optional.of(Question.NOTHING_SAID)
                        : done(new OperatorAction.Note(pull, texts.get(0).strip())));
    }

    /** What the operator heard: what is not measured can only be said. */
    Question knock(int pull) {
        return new Question(
                "Did you hear knock in pull " + pull + "?",
                List.of(Question.Field.choice("Heard", List.of("", "yes", "no"))),
                texts -> {
                    String said = texts.get(0).strip().toLowerCase(Locale.ROOT);
                    if (!YES.contains(said) && !NO.contains(said)) {
                        return Optional.of(Question.noWord("The answer", "yes or no"));
                    }
                    KnockMark mark = YES.contains(said) ? KnockMark.HEARD : KnockMark.NONE;
                    return done(
                            new OperatorAction.Correct(pull, AskedSetting.none().withKnock(mark)));
                });
    }

    /** What a pull was really run with. */
    Question correct(MeasuredPull pull) {
        EngineSetting setting = pull.setting();
        Optional<String> offset = setting.offset().map(value -> Shown.fixed(value.deg(), 1));
        return new Question(
                "Pull " + pull.number() + " was run with:",
                List.of(
                        Question.Field.narrow(
                                Question.spark(offset.isPresent()),
                                offset.or(() -> setting.advance().map(value -> Shown.fixed(value.deg(), 1)))
                                        .orElse("")),
                        Question.Field.narrow(
                                "Lambda",
                                setting.lambda()
                                        .map(value -> Shown.fixed(value.value(), 3))
                                        .orElse("")),
                        Question.Field.narrow("Label", setting.label().orElse("")),
                        Question.Field.narrow("Fuel", setting.fuel().orElse(""))),
                texts -> Question.setting(
                        offset.isPresent(), texts, said -> done(new OperatorAction.Correct(pull.number(), said))));
    }

    /** What is set in the engine for the next pull, before it is run. */
    Question set(int pull, Optional<String> advance, Optional<String> lambda, boolean offset) {
        return new Question(
                "Set for pull " + pull + ":",
                List.of(
                        Question.Field.narrow(Question.spark(offset), advance.orElse("")),
                        Question.Field.narrow("Lambda", lambda.orElse(""))),
                texts -> Question.setting(offset, texts, said -> done(new OperatorAction.Setting(pull, said, false))));
    }

    /** What is fitted from the next pull on. */
    Question fitted() {
        return new Question(
                "Parts or fuel from the next pull on:",
                List.of(Question.Field.wide("Label", ""), Question.Field.narrow("Fuel", "")),
                texts -> {
                    Optional<String> label = Question.word(texts.get(0));
                    Optional<String> fuel = Question.word(texts.get(1));
                    return label.isEmpty() && fuel.isEmpty()
                            ? Optional.of(Question.NOTHING_SAID)
                            : done(new OperatorAction.Next(label, fuel));
                });
    }

    /** Another limit from now on. */
    Question limit(SweepPlan plan) {
        return new Question(
                "Change a limit of the plan:",
                List.of(Question.Field.choice("Limit", limits()), Question.Field.narrow("Value", "")),
                texts -> {
                    Question.FieldNumber value = Question.FieldNumber.of("Value", texts.get(1));
                    if (value.fault().isPresent() || value.value().isEmpty()) {
                        return value.fault().or(() -> Optional.of(Question.noNumber("Value", "")));
                    }
                    OperatorAction.ChangeLimit change = new OperatorAction.ChangeLimit(
                            texts.get(0).split(":", 2)[0].strip(), value.value().get());
                    Outcome<SweepPlan> changed = OperatorActions.changed(plan, change);
                    return changed.isFailed()
                            ? Optional.of(sentences.sentence(changed.findings().get(0)))
                            : done(change);
                });
    }

    /** The keys of the plan's limits, each with what it is and its unit. */
    private static List<String> limits() {
        return PlanKeys.tables().stream()
                .filter(table -> table.name().equals("limits"))
                .flatMap(table -> table.keys().stream())
                .map(key -> key.name() + ": " + key.label() + (key.unitSign().isEmpty() ? "" : ", " + key.unitSign()))
                .toList();
    }

    private Optional<String> done(OperatorAction act) {
        tell.accept(act);
        return Optional.empty();
    }
}
