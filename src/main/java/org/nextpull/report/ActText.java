package org.nextpull.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
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
            return "watches by hand, where no channel does: " + limits(watch);
        }

        @Override
        public String next(OperatorAction.Next next) {
            List<String> parts = new ArrayList<>();
            next.label().ifPresent(label -> parts.add("label " + label));
            next.fuel().ifPresent(fuel -> parts.add("fuel " + fuel));
            return "parts/fuel from the next pull: " + String.join(", ", parts);
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
}
