package org.nextpull.cli;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import org.nextpull.plan.SweepPlan;
import org.nextpull.simulator.ServeCommand;

/** What a user typed to a served engine. */
sealed interface ServeTyped {
    /**
     * Something that the engine is told.
     *
     * @param command what
     */
    record Command(ServeCommand command) implements ServeTyped {}

    /** Say what can be typed. */
    record Help() implements ServeTyped {}

    /**
     * Not understood.
     *
     * @param message what was wrong with it
     */
    record Wrong(String message) implements ServeTyped {}

    double USUAL_TROUBLE_S = 3;
    double LONGEST_S = 3600;

    /** Understands a line; settings are typed as in practice. */
    static ServeTyped of(String line, SweepPlan plan) {
        List<String> words = List.of(line.strip().toLowerCase(Locale.ROOT).split("\\s+"));
        return switch (words.get(0)) {
            case "idle", "lift" ->
                words.size() == 1
                        ? new Command(new ServeCommand.Lift())
                        : seconds(words, seconds -> new ServeCommand.Idle(seconds));
            case "hold" -> speed(words, plan);
            case "garbage" -> seconds(words, trouble(ServeCommand.Trouble.Kind.GARBAGE));
            case "silence" -> seconds(words, trouble(ServeCommand.Trouble.Kind.SILENCE));
            case "end" -> new Command(new ServeCommand.End());
            default -> setting(Typed.of(line, plan));
        };
    }

    private static DoubleFunction<ServeCommand> trouble(ServeCommand.Trouble.Kind kind) {
        return seconds -> new ServeCommand.Trouble(kind, seconds);
    }

    private static ServeTyped seconds(List<String> words, DoubleFunction<ServeCommand> command) {
        OptionalDouble seconds = words.size() == 1 ? OptionalDouble.of(USUAL_TROUBLE_S) : Typed.number(words.get(1));
        boolean known = words.size() <= 2
                && seconds.isPresent()
                && seconds.getAsDouble() > 0
                && seconds.getAsDouble() <= LONGEST_S;
        return known
                ? new Command(command.apply(seconds.getAsDouble()))
                : new Wrong(words.get(0) + " takes seconds, from a fraction to 3600, such as: " + words.get(0) + " 3");
    }

    private static ServeTyped speed(List<String> words, SweepPlan plan) {
        OptionalDouble rpm = words.size() == 2 ? Typed.number(words.get(1)) : OptionalDouble.empty();
        boolean inBand = rpm.isPresent()
                && plan.band()
                        .filter(band -> band.fromRpm() <= rpm.getAsDouble() && rpm.getAsDouble() <= band.toRpm())
                        .isPresent();
        return inBand
                ? new Command(new ServeCommand.Hold(rpm.getAsDouble()))
                : new Wrong("hold takes a speed of the band, such as: hold 4000");
    }

    private static ServeTyped setting(Typed typed) {
        if (typed instanceof Typed.Setting setting) {
            return new Command(new ServeCommand.Set(setting.setting()));
        }
        if (typed instanceof Typed.AsProposed) {
            return new Command(new ServeCommand.Pull());
        }
        if (typed instanceof Typed.Stop) {
            return new Command(new ServeCommand.End());
        }
        if (typed instanceof Typed.Wrong wrong) {
            return new Wrong(wrong.message());
        }
        return new Help();
    }
}
