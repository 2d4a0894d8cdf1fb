package org.nextpull.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.KnockMark;
import org.nextpull.plan.Limit;
import org.nextpull.plan.SweepPlan;
import org.nextpull.session.OperatorAction;

/** What an operator typed while a session runs, or a day of practice. */
sealed interface LiveTyped {
    /** Something to be done. */
    record Do(OperatorAction act) implements LiveTyped {}

    /** What was proposed is set. */
    record AsProposed() implements LiveTyped {}

    /**
     * Something else is set for the pull that is running or comes next.
     *
     * @param setting parts that are empty are as proposed
     */
    record Set(EngineSetting setting) implements LiveTyped {}

    /** Say why. */
    record Why() implements LiveTyped {}

    /** Show the pulls so far. */
    record Show() implements LiveTyped {}

    /** Say what can be typed. */
    record Help() implements LiveTyped {}

    /** The session ends. */
    record End() implements LiveTyped {}

    /** Not understood. */
    record Wrong(String message) implements LiveTyped {}

    /**
     * What there is to know of the day to understand a line.
     *
     * @param nextPull number of the pull that is running or comes next
     * @param running whether it is running
     * @param unwatched limits of the plan that nothing watched in the last pull
     */
    record Context(SweepPlan plan, int nextPull, boolean running, List<Limit> unwatched) {}

    /** What stands for the reason of one who gave none. */
    String WITHOUT_REASON = "excluded by the operator";

    /** Understands a line. */
    static LiveTyped of(String line, Context day) {
        String typed = line.strip();
        List<String> words = List.of(typed.split("\\s+"));
        String rest = typed.substring(words.get(0).length()).strip();
        return switch (words.get(0).toLowerCase(Locale.ROOT)) {
            case "" -> new AsProposed();
            case "why", "?" -> new Why();
            case "show" -> new Show();
            case "help" -> new Help();
            case "end", "stop", "quit", "exit" -> new End();
            case "note" -> note(rest);
            case "limit" -> limit(words);
            case "next" -> next(words);
            case "correct" -> correct(words, rest, day);
            case "exclude", "strike" ->
                named(words, "exclude 3 the clutch slipped", (pull, why) -> new OperatorAction.Strike(pull, why));
            case "reinstate", "restore" -> named(words, "reinstate 3", (pull, why) -> new OperatorAction.Restore(pull));
            case "override", "lift" -> override(words);
            case "unwatched" -> unwatched(words, day);
            case "knock" -> mark(words, day, KnockMark.HEARD);
            case "quiet" -> mark(words, day, KnockMark.NONE);
            default -> setting(typed, day.plan());
        };
    }

    private static LiveTyped setting(String typed, SweepPlan plan) {
        Typed understood = Typed.of(typed, plan);
        if (understood instanceof Typed.Setting setting) {
            return new Set(setting.setting());
        }
        return understood instanceof Typed.Wrong wrong ? new Wrong(wrong.message()) : new Help();
    }

    private static LiveTyped note(String text) {
        String first = text.isEmpty() ? "" : text.split("\\s+", 2)[0];
        if (first.isEmpty()) {
            return new Wrong("note needs words, such as: note smells rich, or of pull 3: note 3 smells rich");
        }
        String rest = text.substring(first.length()).strip();
        return pull(first).isPresent() && !rest.isEmpty()
                ? new Do(new OperatorAction.Note(pull(first), rest))
                : new Do(new OperatorAction.Note(OptionalInt.empty(), text));
    }

    private static LiveTyped limit(List<String> words) {
        OptionalDouble value = words.size() == 3 ? Typed.number(words.get(2)) : OptionalDouble.empty();
        return value.isPresent()
                ? new Do(new OperatorAction.ChangeLimit(words.get(1), value.getAsDouble()))
                : new Wrong("limit needs a key of the plan's [limits] and a number, such as: limit exhaust_c 900");
    }

    private static LiveTyped next(List<String> words) {
        Optional<String> label = Optional.empty();
        Optional<String> fuel = Optional.empty();
        StringBuilder open = new StringBuilder();
        String part = "";
        for (String word : words.subList(1, words.size())) {
            boolean key = word.equalsIgnoreCase("label") || word.equalsIgnoreCase("fuel");
            if (key) {
                part = word.toLowerCase(Locale.ROOT);
                open.setLength(0);
            } else if (part.isEmpty()) {
                return wrongNext();
            } else {
                open.append(open.isEmpty() ? "" : " ").append(word);
                label = part.equals("label") ? Optional.of(open.toString()) : label;
                fuel = part.equals("fuel") ? Optional.of(open.toString()) : fuel;
            }
        }
        return label.isEmpty() && fuel.isEmpty() ? wrongNext() : new Do(new OperatorAction.Next(label, fuel));
    }

    private static LiveTyped wrongNext() {
        return new Wrong("next needs a label or a fuel, such as: next label long runners, or: next fuel e10");
    }

    private static LiveTyped correct(List<String> words, String rest, Context day) {
        OptionalInt number = words.size() > 2 ? pull(words.get(1)) : OptionalInt.empty();
        if (number.isEmpty()) {
            return new Wrong("correct needs the number of a pull and what it was run with, such as: correct 3 26 0.87");
        }
        Typed values = Typed.of(rest.substring(words.get(1).length()), day.plan());
        if (values instanceof Typed.Setting setting) {
            return new Do(new OperatorAction.Correct(number.getAsInt(), AskedSetting.ofNumbers(setting.setting())));
        }
        return values instanceof Typed.Wrong wrong
                ? wrong(wrong)
                : new Wrong("correct needs what the pull was run with, such as: correct 3 26 0.87");
    }

    private static LiveTyped wrong(Typed.Wrong wrong) {
        return new Wrong(wrong.message());
    }

    private static LiveTyped override(List<String> words) {
        if (words.size() < 3) {
            return new Wrong(
                    "override needs the number of a pull and your reason, such as: override 3 a loose stay rang");
        }
        return named(words, "override 3 a loose stay rang", (pull, why) -> new OperatorAction.Lift(pull, why));
    }

    private static LiveTyped unwatched(List<String> words, Context day) {
        List<String> known = Stream.of(Limit.values()).map(Limit::id).toList();
        List<String> named = words.subList(1, words.size());
        if (!known.containsAll(named)) {
            return new Wrong("unwatched alone means all that is not watched now; a limit after it is one of "
                    + String.join(", ", known));
        }
        List<Limit> limits = named.isEmpty()
                ? day.unwatched()
                : named.stream().map(Limit::of).toList();
        return limits.isEmpty()
                ? new Wrong(
                        "every limit of the plan was watched in the last pull; name the one that you watch, such as:"
                                + " unwatched exhaust")
                : new Do(new OperatorAction.OwnWatch(limits));
    }

    private static LiveTyped mark(List<String> words, Context day, KnockMark mark) {
        AskedSetting marked = AskedSetting.none().withKnock(mark);
        if (words.size() == 1 && day.running()) {
            return new Do(new OperatorAction.Setting(day.nextPull(), marked, false));
        }
        OptionalInt number = words.size() > 1 ? pull(words.get(1)) : OptionalInt.of(day.nextPull() - 1);
        return number.isEmpty()
                ? new Wrong("knock and quiet mark the last pull, or the one whose number follows: knock 3")
                : new Do(new OperatorAction.Correct(number.getAsInt(), marked));
    }

    /** Makes an act of a pull and words. */
    @FunctionalInterface
    interface OnPull {
        OperatorAction of(int pull, String words);
    }

    private static LiveTyped named(List<String> words, String example, OnPull act) {
        OptionalInt number = words.size() > 1 ? pull(words.get(1)) : OptionalInt.empty();
        if (number.isEmpty()) {
            return new Wrong(words.get(0) + " needs the number of a pull, such as: " + example);
        }
        String reason = String.join(" ", words.subList(2, words.size()));
        return new Do(act.of(number.getAsInt(), reason.isEmpty() ? WITHOUT_REASON : reason));
    }

    private static OptionalInt pull(String word) {
        return word.matches("\\d{1,6}") ? OptionalInt.of(Integer.parseInt(word)) : OptionalInt.empty();
    }
}
