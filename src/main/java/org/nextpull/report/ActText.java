package org.nextpull.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.KnockMark;
import org.nextpull.session.OperatorAction;

/** What the operator did by hand, in words. */
public final class ActText {
    private ActText() {}

    /** A sentence without its full stop: {@code excluded pull 3: slipped}. */
    public static String of(OperatorAction act) {
        return act.in(new Words());
    }

    /** What was taken down of an act, to whoever did it. */
    public static String taken(OperatorAction act) {
        return act.in(new Taken());
    }

    private static final class Words implements OperatorAction.Cases<String> {
        @Override
        public String strike(OperatorAction.Strike strike) {
            return "excluded pull " + strike.pull() + because(strike.why());
        }

        @Override
        public String restore(OperatorAction.Restore restore) {
            return "reinstated pull " + restore.pull();
        }

        @Override
        public String lift(OperatorAction.Lift lift) {
            return "OVERRIDE of the knock and limit blocks from pull " + lift.pull() + because(lift.why());
        }

        @Override
        public String correct(OperatorAction.Correct correct) {
            return "corrected pull " + correct.pull() + ": " + ActText.setting(correct.setting());
        }

        @Override
        public String setting(OperatorAction.Setting setting) {
            return (setting.assumed() ? "taken as proposed for pull " : "set for pull ") + setting.pull() + ": "
                    + ActText.setting(setting.setting());
        }

        @Override
        public String note(OperatorAction.Note note) {
            return note.pull().isPresent()
                    ? "on pull " + note.pull().getAsInt() + ": " + note.text()
                    : "note: " + note.text();
        }

        @Override
        public String changeLimit(OperatorAction.ChangeLimit change) {
            return "changed the limit " + change.key() + " to " + Shown.plain(change.value());
        }

        @Override
        public String ownWatch(OperatorAction.OwnWatch watch) {
            return "watches what no channel does: " + limits(watch);
        }

        @Override
        public String next(OperatorAction.Next next) {
            List<String> parts = new ArrayList<>();
            next.label().ifPresent(label -> parts.add("label " + label));
            next.fuel().ifPresent(fuel -> parts.add("fuel " + fuel));
            return "parts/fuel from the next pull: " + String.join(", ", parts);
        }
    }

    private static final class Taken implements OperatorAction.Cases<String> {
        @Override
        public String strike(OperatorAction.Strike strike) {
            return "Pull " + strike.pull() + " excluded from the fit. Its knock and limits still block.";
        }

        @Override
        public String restore(OperatorAction.Restore restore) {
            return "Pull " + restore.pull() + " reinstated.";
        }

        @Override
        public String lift(OperatorAction.Lift lift) {
            return "OVERRIDE of the knock and limit blocks from pull " + lift.pull() + ": " + lift.why()
                    + ". Your reason goes on the sheet.";
        }

        @Override
        public String correct(OperatorAction.Correct correct) {
            return "Pull " + correct.pull() + " was run with " + given(correct.setting())
                    + (correct.setting().hasValues() ? ", as you said; what its log measured counts first." : ".");
        }

        @Override
        public String setting(OperatorAction.Setting setting) {
            return "Set for pull " + setting.pull() + ": " + given(setting.setting()) + ".";
        }

        @Override
        public String note(OperatorAction.Note note) {
            return "Noted"
                    + (note.pull().isPresent() ? " on pull " + note.pull().getAsInt() : "") + ".";
        }

        @Override
        public String changeLimit(OperatorAction.ChangeLimit change) {
            return "The limit " + change.key() + " is " + Shown.plain(change.value())
                    + " from now on; what earlier pulls met stays.";
        }

        @Override
        public String ownWatch(OperatorAction.OwnWatch watch) {
            return "You watch what no channel does: " + limits(watch)
                    + ". Steps toward what it guards are half as long.";
        }

        @Override
        public String next(OperatorAction.Next next) {
            return "Parts/fuel from the next pull: "
                    + Stream.of(
                                    next.label().map(label -> "label " + label),
                                    next.fuel().map(fuel -> "fuel " + fuel))
                            .flatMap(Optional::stream)
                            .collect(Collectors.joining(", "))
                    + ".";
        }
    }

    /** The limits that are watched by hand. */
    public static String limits(OperatorAction.OwnWatch watch) {
        return watch.limits().stream().map(WatchText::name).collect(Collectors.joining(", "));
    }

    private static String because(String why) {
        return why.isBlank() ? "" : ": " + why;
    }

    private static String setting(AskedSetting asked) {
        List<String> parts = new ArrayList<>();
        if (asked.hasValues()) {
            parts.add(AdviceText.setting(asked.setting()));
        }
        asked.setting().label().ifPresent(label -> parts.add("label " + label));
        asked.setting().fuel().ifPresent(fuel -> parts.add("fuel " + fuel));
        if (asked.knock() != KnockMark.NOT_MEASURED) {
            parts.add(asked.knock() == KnockMark.HEARD ? "knock heard" : "no knock heard");
        }
        asked.setting().note().ifPresent(parts::add);
        return String.join(", ", parts);
    }

    private static String given(AskedSetting setting) {
        List<String> parts = new ArrayList<>();
        String values = AdviceText.values(setting.setting());
        if (!values.isEmpty()) {
            parts.add(values);
        }
        setting.setting().label().ifPresent(label -> parts.add("label " + label));
        setting.setting().fuel().ifPresent(fuel -> parts.add("fuel " + fuel));
        switch (setting.knock()) {
            case HEARD -> parts.add("knock heard");
            case NONE -> parts.add("no knock heard");
            case NOT_MEASURED -> {
                // nothing was said of it
            }
        }
        return parts.isEmpty() ? "nothing new" : String.join(", ", parts);
    }
}
