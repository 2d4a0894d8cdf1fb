package org.nextpull.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.advice.Advice;
import org.nextpull.advice.AdviceCode;
import org.nextpull.advice.Verdict;
import org.nextpull.alarm.ChannelLife;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.finding.FindingCode;
import org.nextpull.plan.Limit;
import org.nextpull.plan.SweepPlan;
import org.nextpull.pull.BenchLog;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Lambda;

/** A day of dead sensors, from the log to what is advised. */
class WatchGapTest {
    private static final Channel EXHAUST = Channel.of(Role.EXHAUST_TEMPERATURE);
    private static final double ZERO_C = 273.15;

    private static SweepPlan mixture(String limits) {
        return Days.plan("""
                [band]
                from_rpm = 3000
                to_rpm = 5500
                [mixture]
                start_lambda = 0.86
                richest_lambda = 0.78
                leanest_lambda = 0.94
                [limits]
                """ + limits);
    }

    /** One pull with a channel that reads as the rule says. */
    private static SessionResult day(SweepPlan plan, Channel channel, ToDoubleFunction<Map<Channel, Double>> rule) {
        BenchLog log = Days.pull(new BenchLog(50, 1), 1).with(channel, rule);
        AskedSetting asked =
                AskedSetting.none().withValues(Optional.empty(), Optional.empty(), Optional.of(Lambda.of(0.86)));
        return Session.evaluate(
                Days.ofLogs(plan, new Days.Named("day.csv", log)).withSettings(List.of(asked)));
    }

    private static MeasuredPull only(SessionResult result) {
        assertThat(result.pulls()).hasSize(1);
        return result.pulls().get(0);
    }

    private static Advice advice(SessionResult result) {
        return result.verdict().map(Verdict::advice).orElseThrow();
    }

    /** Such a sensor used to be taken for the mixture, and the next one asked for was leaner. */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 0.8, 1.99})
    void aDeadLambdaIsNoSettingAndLeadsNowhere(double stuck) {
        SessionResult result = day(mixture(""), BenchLog.LAMBDA, row -> stuck);

        assertThat(only(result).isWatched(Limit.LEAN)).isFalse();
        assertThat(only(result).setting().lambda().map(Lambda::value)).hasValue(0.86);
        assertThat(result.watchGaps()).extracting(SessionResult.WatchGap::limit).containsExactly(Limit.LEAN);
        assertThat(result.watchGaps().get(0).inAll()).isTrue();
        assertThat(advice(result).code()).isEqualTo(AdviceCode.NOT_WATCHED);
        assertThat(advice(result).setting().orElseThrow().lambda().orElseThrow().value())
                .isLessThanOrEqualTo(0.86);
    }

    @ParameterizedTest
    @CsvSource({"20, IMPLAUSIBLE, false", "1999, OUT_OF_RANGE, true", "2000, OUT_OF_RANGE, true"})
    void anExhaustSensorThatIsDeadWatchesNothingAndAtItsStopTheLimitIsMet(
            double celsius, ChannelLife.Life life, boolean met) {
        SessionResult result = day(mixture("exhaust_c = 900\n"), EXHAUST, row -> celsius + ZERO_C);

        assertThat(result.watchGaps()).extracting(gap -> gap.what().life()).contains(life);
        assertThat(only(result).isClean()).isEqualTo(!met);
        assertThat(Days.codes(only(result).findings()))
                .containsAnyOf(FindingCode.CHANNEL_IMPLAUSIBLE, FindingCode.CHANNEL_OUT_OF_RANGE);
    }

    @Test
    void aLiveChannelLeavesNoGap() {
        SweepPlan plan = mixture("lean_lambda = 0.98\n");
        SessionResult result =
                day(plan, BenchLog.LAMBDA, row -> 0.86 + 0.003 * Math.sin(97 * row.getOrDefault(BenchLog.TIME, 0.0)));

        assertThat(result.watchGaps()).isEmpty();
        assertThat(result.unwatchedNow()).isEmpty();
        assertThat(only(result).setting().lambda().orElseThrow().value()).isCloseTo(0.86, within(0.002));
        assertThat(advice(result).code()).isNotEqualTo(AdviceCode.NOT_WATCHED);
    }

    /** Without a lambda channel a mixture plan says so, though it limits no lambda. */
    @Test
    void aMixturePlanWithoutALambdaChannelSaysSoAtOnce() {
        SessionResult result = day(mixture(""), EXHAUST, row -> 900);
        BenchLog log = Days.pull(new BenchLog(50, 1), 1).without(BenchLog.LAMBDA);
        SessionResult without = Session.evaluate(Days.ofLogs(mixture(""), new Days.Named("day.csv", log)));

        assertThat(result.pulls()).isNotEmpty();
        assertThat(Days.codes(without.findings())).contains(FindingCode.LIMIT_NOT_WATCHED);
        assertThat(advice(without).code()).isEqualTo(AdviceCode.NOT_WATCHED);
    }
}
