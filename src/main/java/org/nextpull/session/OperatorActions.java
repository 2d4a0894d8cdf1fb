package org.nextpull.session;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.nextpull.advice.NextConfiguration;
import org.nextpull.channel.AskedSetting;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.plan.Limit;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.LimitChange;

/**
 * What the operator did so far, in order, and what it makes of a day. The same acts give the same day, whenever and however often they
 * are gone through.
 */
public final class OperatorActions {
    private static final String BETWEEN_NOTES = "; ";

    private final List<OperatorAction> acts;
    private final Map<Integer, String> struck = new HashMap<>();
    private final Set<Integer> lifted = new HashSet<>();
    private final Map<Integer, AskedSetting> settings = new HashMap<>();
    private final Set<Integer> assumed = new HashSet<>();
    private final Set<Limit> ownWatch = EnumSet.noneOf(Limit.class);
    private NextConfiguration next = NextConfiguration.same();

    private OperatorActions(List<OperatorAction> acts) {
        this.acts = List.copyOf(acts);
        this.acts.forEach(this::take);
    }

    public static OperatorActions of(List<OperatorAction> acts) {
        return new OperatorActions(acts);
    }

    public static OperatorActions none() {
        return new OperatorActions(List.of());
    }

    /** The acts, in order. */
    public List<OperatorAction> all() {
        return acts;
    }

    private void take(OperatorAction act) {
        if (act instanceof OperatorAction.Strike strike) {
            struck.put(strike.pull(), strike.why());
        } else if (act instanceof OperatorAction.Restore restore) {
            struck.remove(restore.pull());
        } else if (act instanceof OperatorAction.Lift lift) {
            lifted.add(lift.pull());
        } else if (act instanceof OperatorAction.OwnWatch watch) {
            ownWatch.addAll(watch.limits());
        } else if (act instanceof OperatorAction.Setting setting) {
            set(setting);
        } else if (act instanceof OperatorAction.Correct correct) {
            over(correct.pull(), correct.setting());
            if (correct.setting().hasValues()) {
                assumed.remove(correct.pull());
            }
        } else if (act instanceof OperatorAction.Note note) {
            note.pull().ifPresent(pull -> remark(pull, note.text()));
        } else if (act instanceof OperatorAction.Next fitted) {
            next = new NextConfiguration(
                    fitted.label().or(next::label), fitted.fuel().or(next::fuel));
        }
    }

    private void set(OperatorAction.Setting act) {
        over(act.pull(), act.setting());
        if (act.assumed()) {
            assumed.add(act.pull());
        } else {
            assumed.remove(act.pull());
        }
    }

    private void over(int pull, AskedSetting setting) {
        settings.merge(pull, setting, (before, now) -> now.orElse(before));
    }

    private void remark(int pull, String text) {
        AskedSetting before = settings.getOrDefault(pull, AskedSetting.none());
        String all = before.setting()
                .note()
                .map(earlier -> earlier + BETWEEN_NOTES + text)
                .orElse(text);
        settings.put(pull, before.withNote(Optional.of(all)));
    }

    /** What is set for a pull, as far as anybody has said; empty where nobody has. */
    public Optional<AskedSetting> settingOf(int pull) {
        return Optional.ofNullable(settings.get(pull));
    }

    /** Whether spark or mixture of a pull were said or assumed. */
    public boolean isSet(int pull) {
        return settingOf(pull).filter(AskedSetting::hasValues).isPresent();
    }

    /** What was struck, lifted, set, corrected, and said to be watched by hand. */
    public Amendments amendments() {
        return new Amendments(struck, lifted, settings, assumed, ownWatch);
    }

    /** The plan with the limits as they were changed; a change that the plan does not take leaves it as it is. */
    public SweepPlan plan(SweepPlan plan) {
        SweepPlan changed = plan;
        for (OperatorAction act : acts) {
            if (act instanceof OperatorAction.ChangeLimit change) {
                changed = changed(changed, change).value().orElse(changed);
            }
        }
        return changed;
    }

    /** The plan after one limit was changed, or what is wrong with the change. */
    public static Outcome<SweepPlan> changed(SweepPlan plan, OperatorAction.ChangeLimit change) {
        return LimitChange.of(plan, change.key(), change.value());
    }

    /**
     * What is said of an act on a pull that there is not; one may say what is set for the next pull, and note something on it.
     *
     * @param pulls how many pulls there are
     */
    public static Optional<Finding> unknownPull(OperatorAction act, int pulls) {
        int most = act instanceof OperatorAction.Setting || act instanceof OperatorAction.Note ? pulls + 1 : pulls;
        OptionalInt number = pullOf(act);
        return number.isEmpty() || (number.getAsInt() >= 1 && number.getAsInt() <= most)
                ? Optional.empty()
                : Optional.of(Finding.error(
                        FindingCode.LIVE_PULL_UNKNOWN,
                        Place.nowhere(),
                        Detail.of("number", number.getAsInt()),
                        Detail.of("pulls", pulls)));
    }

    private static OptionalInt pullOf(OperatorAction act) {
        if (act instanceof OperatorAction.Strike strike) {
            return OptionalInt.of(strike.pull());
        } else if (act instanceof OperatorAction.Restore restore) {
            return OptionalInt.of(restore.pull());
        } else if (act instanceof OperatorAction.Lift lift) {
            return OptionalInt.of(lift.pull());
        } else if (act instanceof OperatorAction.Correct correct) {
            return OptionalInt.of(correct.pull());
        } else if (act instanceof OperatorAction.Setting setting) {
            return OptionalInt.of(setting.pull());
        }
        return act instanceof OperatorAction.Note note ? note.pull() : OptionalInt.empty();
    }

    /** What is fitted now, as it was announced. */
    public NextConfiguration next() {
        return next;
    }

    /** A day with all that was done by hand in it. */
    public SessionInput applied(SessionInput day) {
        return day.withPlan(plan(day.plan())).withAmendments(amendments()).withNext(next);
    }
}
