package org.nextpull.live;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.nextpull.channel.KnockMark;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.plan.SweepPlan;
import org.nextpull.session.Act;
import org.nextpull.session.Acts;

/** The acts of a session so far; one that names a pull which is not there, or a limit that the plan does not know, is not taken. */
final class ActBook {
    private final List<Act> taken = new ArrayList<>();
    private Acts acts = Acts.none();
    private SweepPlan plan;

    ActBook(SweepPlan plan) {
        this.plan = plan;
    }

    Acts acts() {
        return acts;
    }

    /** The plan with its limits as they stand now. */
    SweepPlan plan() {
        return plan;
    }

    /**
     * Takes an act.
     *
     * @param pulls how many pulls there are
     * @return why it is not taken; empty when it is
     */
    List<Finding> take(Act act, int pulls) {
        Optional<Finding> unknown = unknownPull(act, pulls);
        if (unknown.isPresent()) {
            return List.of(unknown.get());
        }
        List<Finding> unknownFuel = unknownFuel(act);
        if (!unknownFuel.isEmpty()) {
            return unknownFuel;
        }
        if (act instanceof Act.ChangeLimit change) {
            Outcome<SweepPlan> changed = Acts.changed(plan, change);
            if (changed.isFailed()) {
                return changed.findings();
            }
            plan = changed.value().orElse(plan);
        }
        taken.add(act);
        acts = Acts.of(taken);
        return List.of();
    }

    /** Whether it was settled what a pull was set to, even if nobody could say; a mark of knock alone settles nothing. */
    boolean isSettled(int pull) {
        return taken.stream()
                .anyMatch(act -> act instanceof Act.Setting setting
                        && setting.pull() == pull
                        && setting.setting().knock() == KnockMark.NOT_MEASURED);
    }

    private List<Finding> unknownFuel(Act act) {
        return act instanceof Act.Next next
                ? next.fuel().stream()
                        .map(fuel -> plan.fuel().blends().then(known -> known.find(fuel, Place.nowhere())))
                        .flatMap(found -> found.value().isPresent() ? Stream.empty() : found.findings().stream())
                        .toList()
                : List.of();
    }

    private static Optional<Finding> unknownPull(Act act, int pulls) {
        int most = act instanceof Act.Setting || act instanceof Act.Note ? pulls + 1 : pulls;
        OptionalInt number = pullOf(act);
        return number.isEmpty() || (number.getAsInt() >= 1 && number.getAsInt() <= most)
                ? Optional.empty()
                : Optional.of(Finding.error(
                        FindingCode.LIVE_PULL_UNKNOWN,
                        Place.nowhere(),
                        Detail.of("number", number.getAsInt()),
                        Detail.of("pulls", pulls)));
    }

    private static OptionalInt pullOf(Act act) {
        if (act instanceof Act.Strike strike) {
            return OptionalInt.of(strike.pull());
        } else if (act instanceof Act.Restore restore) {
            return OptionalInt.of(restore.pull());
        } else if (act instanceof Act.Lift lift) {
            return OptionalInt.of(lift.pull());
        } else if (act instanceof Act.Correct correct) {
            return OptionalInt.of(correct.pull());
        } else if (act instanceof Act.Setting setting) {
            return OptionalInt.of(setting.pull());
        }
        return act instanceof Act.Note note ? note.pull() : OptionalInt.empty();
    }
}
