package org.nextpull.response;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.Channel;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.plan.SweepPlan;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/**
 * Joins what was asked with what the log says: a logged channel wins, and a difference beyond what the setting can resolve is a
 * finding.
 *
 * @param setting the joined setting
 * @param asked spark and mixture that were asked for
 * @param leanestLambda leanest band average of any lambda sensor
 * @param findings where asked and measured disagree
 */
record SettingJoin(EngineSetting setting, EngineSetting asked, Optional<Lambda> leanestLambda, List<Finding> findings) {
    SettingJoin {
        findings = List.copyOf(findings);
    }

    /** A measured lambda scatters about its target by this much, whatever the resolution of the setting. */
    private static final double LAMBDA_CONTROL = 0.015;

    /**
     * Joins.
     *
     * @param band the samples of a pull inside the band
     * @param dead channels that did not live in it: what they read is no setting
     * @param asked what the operator set, where it is known
     */
    static SettingJoin of(Samples band, List<Channel> dead, Optional<AskedSetting> asked, SweepPlan plan, Place place) {
        List<Finding> findings = new ArrayList<>();
        Optional<Advance> loggedAdvance = mean(band, Channel.of(Role.ADVANCE)).map(Advance::ofDeg);
        EngineSetting set = asked.map(AskedSetting::setting).orElseGet(EngineSetting::none);
        double resolutionDeg =
                plan.timing().map(timing -> timing.step().resolution()).orElse(0.5);
        differ(loggedAdvance.map(Advance::deg), set.advance().map(Advance::deg), resolutionDeg)
                .ifPresent(gap -> findings.add(disagreement(FindingCode.ADVANCE_NOT_AS_ASKED, gap, place)));
        List<Lambda> sensors = lambdas(band, dead);
        Optional<Lambda> loggedLambda = sensors.stream().findFirst();
        differ(loggedLambda.map(Lambda::value), set.lambda().map(Lambda::value), LAMBDA_CONTROL)
                .ifPresent(gap -> findings.add(disagreement(FindingCode.LAMBDA_NOT_AS_ASKED, gap, place)));
        EngineSetting setting = EngineSetting.ofNumbers(
                        loggedAdvance.or(set::advance),
                        mean(band, Channel.of(Role.ADVANCE_OFFSET))
                                .map(Advance::ofDeg)
                                .or(set::offset),
                        loggedLambda.or(set::lambda))
                .fitted(
                        word(band, Role.LABEL).or(set::label),
                        word(band, Role.FUEL).or(set::fuel).or(() -> plan.fuel().blend()))
                .withNote(set.note());
        Optional<Lambda> leanest =
                sensors.stream().max(Comparator.naturalOrder()).or(set::lambda);
        return new SettingJoin(setting, set, leanest, findings);
    }

    private static Optional<double[]> differ(Optional<Double> logged, Optional<Double> asked, double most) {
        if (logged.isEmpty() || asked.isEmpty() || Math.abs(logged.get() - asked.get()) <= most) {
            return Optional.empty();
        }
        return Optional.of(new double[] {logged.get(), asked.get()});
    }

    private static Finding disagreement(FindingCode code, double[] gap, Place place) {
        return Finding.warning(code, place, Detail.of("measured", gap[0]), Detail.of("asked", gap[1]));
    }

    private static List<Lambda> lambdas(Samples band, List<Channel> dead) {
        return lambdaSensors(band, dead).stream()
                .flatMap(channel -> mean(band, channel).stream())
                .filter(value -> value > 0)
                .map(Lambda::of)
                .toList();
    }

    /** The lambda sensors that live, by number. */
    static List<Channel> lambdaSensors(Samples samples, List<Channel> dead) {
        return samples.channels().stream()
                .filter(channel -> channel.role() == Role.LAMBDA && !dead.contains(channel))
                .sorted(Comparator.comparingInt(Channel::sensor))
                .toList();
    }

    private static Optional<Double> mean(Samples band, Channel channel) {
        double[] values = band.presentValues(channel);
        return values.length == 0
                ? Optional.empty()
                : Optional.of(DoubleStream.of(values).average().orElseThrow());
    }

    private static Optional<String> word(Samples band, Role role) {
        for (int row = 0; row < band.rows(); row++) {
            Optional<String> found = role == Role.LABEL ? band.label(row) : band.fuel(row);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }
}
