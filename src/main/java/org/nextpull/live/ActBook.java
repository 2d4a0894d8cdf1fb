package org.nextpull.live;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.nextpull.channel.KnockMark;
import org.nextpull.finding.Finding;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.plan.SweepPlan;
import org.nextpull.session.OperatorAction;
import org.nextpull.session.OperatorActions;

/** The acts of a session so far; one that names a pull which is not there, or a limit that the plan does not know, is not taken. */
final class ActBook {
    private final List<OperatorAction> taken = new ArrayList<>();
    private OperatorActions acts = OperatorActions.none();
    private SweepPlan plan;

    ActBook(SweepPlan plan) {
        this.plan = plan;
    }

    OperatorActions acts() {
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
    List<Finding> take(OperatorAction act, int pulls) {
        Optional<Finding> unknown = OperatorActions.unknownPull(act, pulls);
        if (unknown.isPresent()) {
            return List.of(unknown.get());
        }
        List<Finding> unknownFuel = unknownFuel(act);
        if (!unknownFuel.isEmpty()) {
            return unknownFuel;
        }
        if (act instanceof OperatorAction.ChangeLimit change) {
            Outcome<SweepPlan> changed = OperatorActions.changed(plan, change);
            if (changed.isFailed()) {
                return changed.findings();
            }
            plan = changed.value().orElse(plan);
        }
        taken.add(act);
        acts = OperatorActions.of(taken);
        return List.of();
    }

    /** Whether it was settled what a pull was set to, even if nobody could say; a mark of knock alone settles nothing. */
    boolean isSettled(int pull) {
        return taken.stream()
                .anyMatch(act -> act instanceof OperatorAction.Setting setting
                        && setting.pull() == pull
                        && setting.setting().knock() == KnockMark.NOT_MEASURED);
    }

    private List<Finding> unknownFuel(OperatorAction act) {
        return act instanceof OperatorAction.Next next
                ? next.fuel().stream()
                        .map(fuel -> plan.fuel().blends().then(known -> known.find(fuel, Place.nowhere())))
                        .flatMap(found -> found.value().isPresent() ? Stream.empty() : found.findings().stream())
                        .toList()
                : List.of();
    }
}
