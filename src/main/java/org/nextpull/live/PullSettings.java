package org.nextpull.live;

import java.util.Optional;
import org.nextpull.advice.NextConfiguration;
import org.nextpull.advice.Proposal;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.plan.SweepPlan;
import org.nextpull.pull.Candidate;
import org.nextpull.session.Act;
import org.nextpull.session.Acts;

/**
 * What a pull that has just ended was set to, as far as nobody has said so and its log does not: as the refused one before it, for
 * nothing was set anew since; else as was proposed, which is an assumption.
 */
final class PullSettings {
    private final SweepPlan plan;

    PullSettings(SweepPlan plan) {
        this.plan = plan;
    }

    /** A pull by its number over the day. */
    record Ended(int number, Candidate candidate) {}

    /**
     * The act that says what is not said yet.
     *
     * @param ended the pull
     * @param before the pull before it
     * @param acts what was said so far
     * @param proposed what was proposed for it
     * @return empty when there is nothing to add
     */
    Optional<Act.Setting> of(Ended ended, Optional<Ended> before, Acts acts, Optional<Proposal> proposed) {
        int number = ended.number();
        NextConfiguration fitted = acts.next();
        AskedSetting known = acts.settingOf(number).orElseGet(AskedSetting::none);
        AskedSetting configuration = AskedSetting.none()
                .withConfiguration(
                        known.label().isPresent() ? Optional.empty() : fitted.label(),
                        known.fuel().isPresent() ? Optional.empty() : fitted.fuel());
        if (acts.isSet(number)) {
            return act(number, configuration, false);
        }
        Optional<Ended> refused =
                before.filter(earlier -> !earlier.candidate().isUsable() && acts.isSet(earlier.number()));
        boolean guessed = refused.map(earlier -> acts.amendments().assumed().contains(earlier.number()))
                .orElse(true);
        AskedSetting values = refused.flatMap(earlier -> acts.settingOf(earlier.number()))
                .or(() -> proposed.map(PullSettings::asked))
                .orElseGet(AskedSetting::none);
        AskedSetting unlogged = unlogged(ended.candidate(), values);
        return act(number, unlogged.orElse(configuration), guessed && hasValues(unlogged));
    }

    private static Optional<Act.Setting> act(int number, AskedSetting setting, boolean assumed) {
        return setting.equals(AskedSetting.none())
                ? Optional.empty()
                : Optional.of(new Act.Setting(number, setting, assumed));
    }

    /** A proposal as what was asked for. */
    static AskedSetting asked(Proposal proposal) {
        return AskedSetting.none().withValues(proposal.advance(), proposal.offset(), proposal.lambda());
    }

    private AskedSetting unlogged(Candidate candidate, AskedSetting values) {
        boolean advance =
                plan.timing().isPresent() && !logs(candidate, Role.ADVANCE) && !logs(candidate, Role.ADVANCE_OFFSET);
        boolean lambda = plan.mixture().isPresent() && !logs(candidate, Role.LAMBDA);
        return AskedSetting.none()
                .withValues(
                        advance ? values.advance() : Optional.empty(),
                        advance ? values.offsetDeg() : Optional.empty(),
                        lambda ? values.lambda() : Optional.empty());
    }

    private static boolean logs(Candidate candidate, Role role) {
        return candidate.samples().presentRows(Channel.of(role)).length > 0;
    }

    private static boolean hasValues(AskedSetting setting) {
        return setting.advance().isPresent()
                || setting.offsetDeg().isPresent()
                || setting.lambda().isPresent();
    }
}
