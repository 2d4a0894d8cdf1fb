package org.nextpull.session;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.nextpull.advice.NextConfiguration;
import org.nextpull.channel.AskedSetting;
import org.nextpull.finding.Outcome;
import org.nextpull.plan.Limit;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.LimitChange;

/**
 * What the operator did so far, in order, and what it makes of a day. The same acts give the same day, whenever and however often they
 * are gone through.
 */
public final class Acts {
    private static final String BETWEEN_NOTES = "; ";

    private final List<Act> acts;
    private final Map<Integer, String> struck = new HashMap<>();
    private final Set<Integer> lifted = new HashSet<>();
    private final Map<Integer, AskedSetting> settings = new HashMap<>();
    private final Set<Integer> assumed = new HashSet<>();
    private final Set<Limit> ownWatch = EnumSet.noneOf(Limit.class);
    private NextConfiguration next = NextConfiguration.same();

    private Acts(List<Act> acts) {
        this.acts = List.copyOf(acts);
        this.acts.forEach(this::take);
    }

    public static Acts of(List<Act> acts) {
        return new Acts(acts);
    }

    public static Acts none() {
        return new Acts(List.of());
    }

    /** The acts, in order. */
    public List<Act> all() {
        return acts;
    }

    private void take(Act act) {
        if (act instanceof Act.Strike strike) {
            struck.put(strike.pull(), strike.why());
        } else if (act instanceof Act.Restore restore) {
            struck.remove(restore.pull());
        } else if (act instanceof Act.Lift lift) {
            lifted.add(lift.pull());
        } else if (act instanceof Act.OwnWatch watch) {
            ownWatch.addAll(watch.limits());
        } else if (act instanceof Act.Setting setting) {
            set(setting);
        } else if (act instanceof Act.Correct correct) {
            over(correct.pull(), correct.setting());
            if (correct.setting().hasValues()) {
                assumed.remove(correct.pull());
            }
        } else if (act instanceof Act.Note note) {
            note.pull().ifPresent(pull -> remark(pull, note.text()));
        } else if (act instanceof Act.Next fitted) {
            next = new NextConfiguration(
                    fitted.label().or(next::label), fitted.fuel().or(next::fuel));
        }
    }

    private void set(Act.Setting act) {
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
        String all =
                before.note().map(earlier -> earlier + BETWEEN_NOTES + text).orElse(text);
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

    /** The remarks, in order; those on a pull are in its setting too. */
    public List<Act.Note> notes() {
        return acts.stream()
                .filter(Act.Note.class::isInstance)
                .map(Act.Note.class::cast)
                .toList();
    }

    /** What was lifted, with the reasons. */
    public List<Act.Lift> lifts() {
        return acts.stream()
                .filter(Act.Lift.class::isInstance)
                .map(Act.Lift.class::cast)
                .toList();
    }

    /** The plan with the limits as they were changed; a change that the plan does not take leaves it as it is. */
    public SweepPlan plan(SweepPlan plan) {
        SweepPlan changed = plan;
        for (Act act : acts) {
            if (act instanceof Act.ChangeLimit change) {
                changed = changed(changed, change).value().orElse(changed);
            }
        }
        return changed;
    }

    /** The plan after one limit was changed, or what is wrong with the change. */
    public static Outcome<SweepPlan> changed(SweepPlan plan, Act.ChangeLimit change) {
        return LimitChange.of(plan, change.key(), change.value());
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
