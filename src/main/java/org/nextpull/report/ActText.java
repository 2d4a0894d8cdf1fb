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

    /** A sentence without its full stop: {@code struck pull 3: slipped}. */
    public static String of(OperatorAction act) {
        if (act instanceof OperatorAction.Strike strike) {
            return "struck pull " + strike.pull() + because(strike.why());
        }
        if (act instanceof OperatorAction.Restore restore) {
            return "took pull " + restore.pull() + " in again";
        }
        if (act instanceof OperatorAction.Lift lift) {
            return "lifted what knock and limits of pull " + lift.pull() + " forbid" + because(lift.why());
        }
        if (act instanceof OperatorAction.Correct correct) {
            return "corrected pull " + correct.pull() + ": " + setting(correct.setting());
        }
        if (act instanceof OperatorAction.Setting setting) {
            return (setting.assumed() ? "taken as proposed for pull " : "set for pull ") + setting.pull() + ": "
                    + setting(setting.setting());
        }
        if (act instanceof OperatorAction.Note note) {
            return note.pull().isPresent()
                    ? "on pull " + note.pull().getAsInt() + ": " + note.text()
                    : "note: " + note.text();
        }
        if (act instanceof OperatorAction.ChangeLimit change) {
            return "changed the limit " + change.key() + " to " + Shown.plain(change.value());
        }
        if (act instanceof OperatorAction.OwnWatch watch) {
            return "watches by hand, where no channel does: " + limits(watch);
        }
        OperatorAction.Next next = (OperatorAction.Next) act;
        List<String> parts = new ArrayList<>();
        next.label().ifPresent(label -> parts.add("label " + label));
        next.fuel().ifPresent(fuel -> parts.add("fuel " + fuel));
        return "fitted for the next pull: " + String.join(", ", parts);
    }

    /** The limits that are watched by hand. */
    public static String limits(OperatorAction.OwnWatch watch) {
        return watch.limits().stream().map(WatchText::name).collect(Collectors.joining(", "));
    }

    private static String because(String why) {
        return why.isBlank() ? "" : ": " + why;
    }

    private static String setting(AskedSetting setting) {
        List<String> parts = new ArrayList<>();
        if (setting.hasValues()) {
            parts.add(AdviceText.setting(AdviceText.asked(setting)));
        }
        setting.label().ifPresent(label -> parts.add("label " + label));
        setting.fuel().ifPresent(fuel -> parts.add("fuel " + fuel));
        if (setting.knock() != KnockMark.NOT_MEASURED) {
            parts.add(setting.knock() == KnockMark.HEARD ? "knock heard" : "no knock heard");
        }
        setting.note().ifPresent(parts::add);
        return String.join(", ", parts);
    }
}
