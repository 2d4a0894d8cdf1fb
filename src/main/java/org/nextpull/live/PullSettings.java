package org.nextpull.live;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.Channel;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.Role;
import org.nextpull.plan.SweepPlan;
import org.nextpull.pull.Candidate;
import org.nextpull.pull.Refusal;
import org.nextpull.session.OperatorAction;
import org.nextpull.session.OperatorActions;
import org.nextpull.session.SourcePulls;

/**
 * What a pull that has just ended was set to, as far as nobody has said so and its log does not: as the refused one before it, for
 * nothing was set anew since; else as was proposed, which is an assumption.
 */
final class PullSettings {
    private final SweepPlan plan;

    PullSettings(SweepPlan plan) {
        this.plan = plan;
    }

    /**
     * The act that says what is not said yet.
     *
     * @param number of the pull over the day
     * @param sources the pulls so far
     * @param acts what was said so far
     * @param proposed what was proposed for it; asked for only where it is needed
     * @return empty when there is nothing to add; an act that says nothing where something would have to be said and nobody can
     */
    Optional<OperatorAction.Setting> of(
            int number, List<SourcePulls> sources, OperatorActions acts, Supplier<Optional<EngineSetting>> proposed) {
        List<Candidate> all = candidates(sources);
        Candidate ended = all.get(number - 1);
        AskedSetting configuration = configuration(acts, number);
        boolean isNews = !configuration.equals(AskedSetting.none());
        if (acts.isSet(number) || isLogged(ended)) {
            return isNews ? Optional.of(new OperatorAction.Setting(number, configuration, false)) : Optional.empty();
        }
        Optional<Integer> refused = Optional.of(number - 1)
                .filter(earlier -> earlier > 0 && !all.get(earlier - 1).isUsable())
                .filter(acts::isSet);
        boolean guessed = refused.map(earlier -> acts.amendments().assumed().contains(earlier))
                .orElse(true);
        AskedSetting values = refused.flatMap(acts::settingOf)
                .or(() -> proposed.get().map(AskedSetting::ofNumbers))
                .map(known -> unlogged(ended, known))
                .orElseGet(AskedSetting::none);
        return Optional.of(
                new OperatorAction.Setting(number, values.orElse(configuration), guessed && values.hasValues()));
    }

    private static AskedSetting configuration(OperatorActions acts, int number) {
        EngineSetting known = acts.settingOf(number).map(AskedSetting::setting).orElseGet(EngineSetting::none);
        return AskedSetting.none()
                .withConfiguration(
                        known.label().isPresent()
                                ? Optional.empty()
                                : acts.next().label(),
                        known.fuel().isPresent()
                                ? Optional.empty()
                                : acts.next().fuel());
    }

    private boolean isLogged(Candidate candidate) {
        return !needsAdvance(candidate) && !needsLambda(candidate);
    }

    private boolean needsAdvance(Candidate candidate) {
        return plan.timing().isPresent() && !logs(candidate, Role.ADVANCE) && !logs(candidate, Role.ADVANCE_OFFSET);
    }

    private boolean needsLambda(Candidate candidate) {
        return plan.mixture().isPresent() && !logs(candidate, Role.LAMBDA);
    }

    private AskedSetting unlogged(Candidate candidate, AskedSetting values) {
        boolean advance = needsAdvance(candidate);
        EngineSetting known = values.setting();
        return AskedSetting.none()
                .withValues(
                        advance ? known.advance() : Optional.empty(),
                        advance ? known.offset() : Optional.empty(),
                        needsLambda(candidate) ? known.lambda() : Optional.empty());
    }

    private static boolean logs(Candidate candidate, Role role) {
        return candidate.samples().presentRows(Channel.of(role)).length > 0;
    }

    /** Whether the program ended in the middle of the last pull: that pull is told when it goes on. */
    static boolean lastWasCut(List<SourcePulls> sources) {
        List<Candidate> all = candidates(sources);
        return !all.isEmpty()
                && all.get(all.size() - 1)
                        .refusal()
                        .filter(refusal -> refusal.reason() == Refusal.Reason.DATA_STOPPED)
                        .isPresent();
    }

    private static List<Candidate> candidates(List<SourcePulls> sources) {
        return sources.stream().flatMap(source -> source.candidates().stream()).toList();
    }

    /** The day as it was after so many pulls. */
    static List<SourcePulls> first(List<SourcePulls> sources, int count) {
        List<SourcePulls> first = new ArrayList<>();
        int left = count;
        for (SourcePulls source : sources) {
            int some = Math.min(left, source.candidates().size());
            left -= some;
            first.add(source.withCandidates(source.candidates().subList(0, some)));
        }
        return first;
    }
}
