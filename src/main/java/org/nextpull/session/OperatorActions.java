package org.nextpull.session;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import org.nextpull.advice.NextConfiguration;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.KnockMark;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.plan.Limit;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanText;

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
        Changes changes = new Changes();
        this.acts.forEach(act -> act.in(changes).run());
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
        return PlanText.withLimit(plan, change.key(), change.value());
    }

    /**
     * These and one more, or why it is not taken: it names a pull that there is not, a limit that the plan does not take, or a fuel that
     * it does not know. One may say what is set for the next pull, and note something on it.
     *
     * @param day the plan of the day
     * @param pulls how many pulls there are
     */
    public Outcome<OperatorActions> with(OperatorAction act, SweepPlan day, int pulls) {
        List<Finding> wrong = wrong(act, plan(day), pulls);
        return wrong.isEmpty()
                ? Outcome.of(of(Stream.concat(acts.stream(), Stream.of(act)).toList()))
                : Outcome.failed(wrong);
    }

    private static List<Finding> wrong(OperatorAction act, SweepPlan plan, int pulls) {
        boolean isAhead = act instanceof OperatorAction.Setting || act instanceof OperatorAction.Note;
        OptionalInt number = pullOf(act);
        if (number.isPresent() && (number.getAsInt() < 1 || number.getAsInt() > pulls + (isAhead ? 1 : 0))) {
            return List.of(Finding.error(
                    FindingCode.LIVE_PULL_UNKNOWN,
                    Place.nowhere(),
                    Detail.of("number", number.getAsInt()),
                    Detail.of("pulls", pulls)));
        }
        if (act instanceof OperatorAction.Next fitted) {
            return fitted.fuel().stream()
                    .map(fuel -> plan.fuel().blends().then(known -> known.find(fuel, Place.nowhere())))
                    .flatMap(found -> found.value().isPresent() ? Stream.empty() : found.findings().stream())
                    .toList();
        }
        Optional<Outcome<SweepPlan>> changed = act instanceof OperatorAction.ChangeLimit change
                ? Optional.of(changed(plan, change))
                : Optional.empty();
        return changed.filter(Outcome::isFailed).map(Outcome::findings).orElse(List.of());
    }

    private static OptionalInt pullOf(OperatorAction act) {
        if (act instanceof OperatorAction.OnPull named) {
            return OptionalInt.of(named.pull());
        }
        return act instanceof OperatorAction.Note note ? note.pull() : OptionalInt.empty();
    }

    /** Whether it was settled what a pull was set to, even if nobody could say; a mark of knock alone settles nothing. */
    public boolean isSettled(int pull) {
        return acts.stream()
                .anyMatch(act -> act instanceof OperatorAction.Setting setting
                        && setting.pull() == pull
                        && setting.setting().knock() == KnockMark.NOT_MEASURED);
    }

    /** What is fitted now, as it was announced. */
    public NextConfiguration next() {
        return next;
    }

    /** A day with all that was done by hand in it. */
    public SessionInput applied(SessionInput day) {
        return day.withPlan(plan(day.plan())).withAmendments(amendments()).withNext(next);
    }

    /** What each act changes. */
    private final class Changes implements OperatorAction.Cases<Runnable> {
        @Override
        public Runnable strike(OperatorAction.Strike strike) {
            return () -> struck.put(strike.pull(), strike.why());
        }

        @Override
        public Runnable restore(OperatorAction.Restore restore) {
            return () -> struck.remove(restore.pull());
        }

        @Override
        public Runnable lift(OperatorAction.Lift lift) {
            return () -> lifted.add(lift.pull());
        }

        @Override
        public Runnable correct(OperatorAction.Correct correct) {
            return () -> {
                over(correct.pull(), correct.setting());
                if (correct.setting().hasValues()) {
                    assumed.remove(correct.pull());
                }
            };
        }

        @Override
        public Runnable setting(OperatorAction.Setting setting) {
            return () -> {
                over(setting.pull(), setting.setting());
                if (setting.assumed()) {
                    assumed.add(setting.pull());
                } else {
                    assumed.remove(setting.pull());
                }
            };
        }

        @Override
        public Runnable note(OperatorAction.Note note) {
            return () -> note.pull().ifPresent(pull -> remark(pull, note.text()));
        }

        @Override
        public Runnable changeLimit(OperatorAction.ChangeLimit change) {
            return () -> {
                // the plan is changed, not the pulls
            };
        }

        @Override
        public Runnable ownWatch(OperatorAction.OwnWatch watch) {
            return () -> ownWatch.addAll(watch.limits());
        }

        @Override
        public Runnable next(OperatorAction.Next fitted) {
            return () -> next = new NextConfiguration(
                    fitted.label().or(next::label), fitted.fuel().or(next::fuel));
        }
    }
}
