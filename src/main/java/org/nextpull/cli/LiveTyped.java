package org.nextpull.cli;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.KnockMark;
import org.nextpull.plan.Limit;
import org.nextpull.plan.SweepPlan;
import org.nextpull.report.HandAct;
import org.nextpull.session.OperatorAction;

/** Understands what an operator types while a session runs, or on a day of practice. */
final class LiveTyped {
    /** What stands for the reason of one who gave none. */
    private static final String WITHOUT_REASON = "excluded by the operator";

    private static final List<String> AGAIN = List.of("reinstate", "restore");

    /**
     * What there is to know of the day to understand a line.
     *
     * @param nextPull number of the pull that is running or comes next
     * @param running whether it is running
     * @param unwatched limits of the plan that nothing watched in the last pull
     */
    record Day(SweepPlan plan, int nextPull, boolean running, List<Limit> unwatched) {}

    /** What is made of a line. */
    interface Reply {
        /** Something is done by hand. */
        void act(OperatorAction act);

        /** What was proposed is set. */
        void asProposed();

        /** Something else is set for the pull that is running or comes next; parts that are empty are as proposed. */
        void set(EngineSetting setting);

        /** Says why. */
        void why();

        /** Shows the pulls so far. */
        void show();

        /** Says what can be typed. */
        void help();

        /** The session ends. */
        void end();

        /** Says what was not understood. */
        void wrong(String message);
    }

    private final Day day;
    private final Reply reply;

    LiveTyped(Day day, Reply reply) {
        this.day = day;
        this.reply = reply;
    }

    /** What can be typed. */
    static String help(String enter, String numbers) {
        return Stream.of(HandAct.values())
                .map(HandAct::help)
                .collect(Collectors.joining("", """
                        Type              to
                        Enter             %s
                        26 0.87           %s
                        """.formatted(enter, numbers), """
                        why, or ?         read why that is proposed, with the numbers
                        show              see all pulls and what they say
                        end               end the session
                        """));
    }

    /** Understands a line. */
    void read(String line) {
        String typed = line.strip();
        List<String> words = List.of(typed.split("\\s+"));
        String first = words.get(0).toLowerCase(Locale.ROOT);
        switch (first) {
            case "" -> reply.asProposed();
            case "why", "?" -> reply.why();
            case "show" -> reply.show();
            case "help" -> reply.help();
            case "end", "stop", "quit", "exit" -> {
                if (words.size() == 1) {
                    reply.end();
                } else {
                    reply.wrong("To end the session type " + first + " alone.");
                }
            }
            default ->
                act(
                        HandAct.of(first).orElse(HandAct.SETTING),
                        words,
                        typed.substring(first.length()).strip());
        }
    }

    private void act(HandAct act, List<String> words, String rest) {
        String first = words.get(0);
        switch (act) {
            case SETTING -> setting(first + " " + rest, reply::set);
            case KNOCK -> mark(words, first.equalsIgnoreCase("quiet") ? KnockMark.NONE : KnockMark.HEARD);
            case CORRECT -> correct(words, rest);
            case EXCLUDE -> {
                if (AGAIN.contains(first.toLowerCase(Locale.ROOT))) {
                    named(words, "reinstate 3", (pull, why) -> new OperatorAction.Restore(pull));
                } else {
                    named(words, "exclude 3 the clutch slipped", OperatorAction.Strike::new);
                }
            }
            case OVERRIDE -> override(words);
            case NOTE -> note(rest);
            case LIMIT -> limit(words);
            case UNWATCHED -> unwatched(words.subList(1, words.size()));
            case FITTED -> next(words.subList(1, words.size()));
        }
    }

    private void setting(String numbers, Consumer<EngineSetting> take) {
        TypedSetting typed = TypedSetting.of(numbers, day.plan());
        typed.setting().ifPresent(take);
        typed.wrong().ifPresent(reply::wrong);
    }

    private void note(String text) {
        List<String> parts = List.of(text.split("\\s+", 2));
        if (text.isEmpty()) {
            reply.wrong("note needs words, such as: note smells rich, or of pull 3: note 3 smells rich");
        } else if (parts.size() > 1 && pull(parts.get(0)).isPresent()) {
            reply.act(new OperatorAction.Note(pull(parts.get(0)), parts.get(1)));
        } else {
            reply.act(new OperatorAction.Note(OptionalInt.empty(), text));
        }
    }

    private void limit(List<String> words) {
        OptionalDouble value = words.size() == 3 ? TypedSetting.number(words.get(2)) : OptionalDouble.empty();
        if (value.isPresent()) {
            reply.act(new OperatorAction.ChangeLimit(words.get(1), value.getAsDouble()));
        } else {
            reply.wrong("limit needs a key of the plan's [limits] and a number, such as: limit exhaust_c 900");
        }
    }

    private void next(List<String> words) {
        Map<String, String> said = new HashMap<>();
        String part = "";
        for (String word : words) {
            String key = word.toLowerCase(Locale.ROOT);
            if (key.equals("label") || key.equals("fuel")) {
                part = key;
                said.remove(part);
            } else if (!part.isEmpty()) {
                said.merge(part, word, (before, more) -> before + " " + more);
            } else {
                said.clear();
                break;
            }
        }
        if (said.isEmpty()) {
            reply.wrong("next needs a label or a fuel, such as: next label long runners, or: next fuel e10");
        } else {
            reply.act(new OperatorAction.Next(
                    Optional.ofNullable(said.get("label")), Optional.ofNullable(said.get("fuel"))));
        }
    }

    private void correct(List<String> words, String rest) {
        OptionalInt number = words.size() > 2 ? pull(words.get(1)) : OptionalInt.empty();
        if (number.isEmpty()) {
            reply.wrong("correct needs the number of a pull and what it was run with, such as: correct 3 26 0.87");
        } else {
            setting(
                    rest.substring(words.get(1).length()),
                    values -> reply.act(new OperatorAction.Correct(number.getAsInt(), AskedSetting.ofNumbers(values))));
        }
    }

    private void override(List<String> words) {
        if (words.size() < 3) {
            reply.wrong("override needs the number of a pull and your reason, such as: override 3 a loose stay rang");
        } else {
            named(words, "override 3 a loose stay rang", OperatorAction.Lift::new);
        }
    }

    private void unwatched(List<String> named) {
        List<String> known = Stream.of(Limit.values()).map(Limit::id).toList();
        List<Limit> limits = named.isEmpty()
                ? day.unwatched()
                : named.stream().filter(known::contains).map(Limit::of).toList();
        if (!known.containsAll(named)) {
            reply.wrong("unwatched alone means all that is not watched now; a limit after it is one of "
                    + String.join(", ", known));
        } else if (limits.isEmpty()) {
            reply.wrong("every limit of the plan was watched in the last pull; name the one that you watch, such as:"
                    + " unwatched exhaust");
        } else {
            reply.act(new OperatorAction.OwnWatch(limits));
        }
    }

    private void mark(List<String> words, KnockMark mark) {
        AskedSetting marked = AskedSetting.none().withKnock(mark);
        OptionalInt number = words.size() > 1 ? pull(words.get(1)) : OptionalInt.of(day.nextPull() - 1);
        if (words.size() == 1 && !day.running() && day.nextPull() == 1) {
            reply.wrong("No pull was run yet; " + words.get(0) + " marks the last one.");
            return;
        }
        if (words.size() == 1 && day.running()) {
            reply.act(new OperatorAction.Setting(day.nextPull(), marked, false));
        } else if (number.isPresent()) {
            reply.act(new OperatorAction.Correct(number.getAsInt(), marked));
        } else {
            reply.wrong("knock and quiet mark the last pull, or the one whose number follows: knock 3");
        }
    }

    /** Makes an act of a pull and words. */
    @FunctionalInterface
    interface OnPull {
        OperatorAction of(int pull, String words);
    }

    private void named(List<String> words, String example, OnPull act) {
        OptionalInt number = words.size() > 1 ? pull(words.get(1)) : OptionalInt.empty();
        if (number.isEmpty()) {
            reply.wrong(words.get(0) + " needs the number of a pull, such as: " + example);
        } else {
            String reason = String.join(" ", words.subList(2, words.size()));
            reply.act(act.of(number.getAsInt(), reason.isEmpty() ? WITHOUT_REASON : reason));
        }
    }

    private static OptionalInt pull(String word) {
        return word.matches("\\d{1,6}") ? OptionalInt.of(Integer.parseInt(word)) : OptionalInt.empty();
    }
}
