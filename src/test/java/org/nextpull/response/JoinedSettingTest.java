package org.nextpull.response;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.Channel;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.Role;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/** What a pull was run with: the log where it says so, else the operator, else the plan. */
class JoinedSettingTest {
    private static final String PLAN = """
            [band]
            from_rpm = 3500
            to_rpm = 5500
            [timing]
            start_deg = 20
            least_deg = 10
            most_deg = 40
            resolution_deg = 0.5
            [fuel]
            blend = "e10"
            """;

    private static AskedSetting asked(double advanceDeg, double lambda) {
        return AskedSetting.none()
                .withValues(Optional.of(Advance.ofDeg(advanceDeg)), Optional.empty(), Optional.of(Lambda.of(lambda)))
                .withConfiguration(Optional.of("asked label"), Optional.empty());
    }

    private static MeasuredPull measured(Sweep sweep, AskedSetting asked) {
        return new PullMeasure(Sweep.plan(PLAN))
                .measure(sweep.candidate(), Optional.of(asked), List.of(), 1)
                .pull();
    }

    private static List<FindingCode> codes(MeasuredPull pull) {
        return pull.findings().stream().map(Finding::code).toList();
    }

    /** From 17 deg at 3500 rpm to 21 deg at 5500 rpm: 19 deg over the band, though the pull goes on to 6000 rpm. */
    @Test
    void aLoggedAdvanceIsAveragedOverTheBandAndOutranksTheAskedOne() {
        Sweep sweep = Sweep.ofRisingTorque().with(Channel.of(Role.ADVANCE), rpm -> 10 + rpm / 500);

        EngineSetting setting = measured(sweep, asked(25, 0.88)).setting();

        assertThat(setting.advance().orElseThrow().deg()).isCloseTo(19, within(1e-9));
        assertThat(setting.lambda()).contains(Lambda.of(0.88));
    }

    @Test
    void anAdvanceIsNotAsAskedBeyondTheStepThatTheIgnitionTakes() {
        Sweep sweep = Sweep.ofRisingTorque().with(Role.ADVANCE, 24.5);

        assertThat(codes(measured(sweep, asked(25, 0.88)))).doesNotContain(FindingCode.ADVANCE_NOT_AS_ASKED);
        assertThat(codes(measured(sweep, asked(25.1, 0.88)))).contains(FindingCode.ADVANCE_NOT_AS_ASKED);
    }

    /** Control holds lambda to about 0.015 of its target, so a difference up to that says nothing. */
    @Test
    void aMixtureIsNotAsAskedBeyondWhatControlHolds() {
        Sweep sweep = Sweep.ofRisingTorque().with(Channel.of(Role.LAMBDA), rpm -> 0.88 + (rpm - 4500) * 1e-6);

        assertThat(codes(measured(sweep, asked(25, 0.893)))).doesNotContain(FindingCode.LAMBDA_NOT_AS_ASKED);
        assertThat(codes(measured(sweep, asked(25, 0.897)))).contains(FindingCode.LAMBDA_NOT_AS_ASKED);
    }

    /** The first sensor is the mixture; the leanest of all is what a lean limit is about. */
    @Test
    void ofTwoSensorsTheFirstIsTheMixtureAndTheLeanestIsKeptBesideIt() {
        Sweep sweep = Sweep.ofRisingTorque()
                .with(new Channel(Role.LAMBDA, 2), rpm -> 0.92 + (rpm - 4500) * 1e-6)
                .with(new Channel(Role.LAMBDA, 1), rpm -> 0.87 + (rpm - 4500) * 1e-6);

        MeasuredPull pull = measured(sweep, asked(25, 0.87));

        assertThat(pull.setting().lambda().orElseThrow().value()).isCloseTo(0.87, within(1e-9));
        assertThat(pull.leanestLambda().orElseThrow().value()).isCloseTo(0.92, within(1e-9));
    }

    @Test
    void aFrozenSensorSaysNothingOfTheMixture() {
        MeasuredPull pull = measured(Sweep.ofRisingTorque().with(Role.LAMBDA, 0.80), asked(25, 0.87));

        assertThat(pull.setting().lambda()).contains(Lambda.of(0.87));
        assertThat(codes(pull)).contains(FindingCode.CHANNEL_FROZEN);
    }

    @Test
    void labelAndFuelOfTheLogOutrankTheOperatorAndThePlan() {
        EngineSetting logged = measured(Sweep.ofRisingTorque().logged("log label", "e85"), asked(25, 0.87))
                .setting();
        EngineSetting unlogged =
                measured(Sweep.ofRisingTorque(), asked(25, 0.87)).setting();

        assertThat(logged.label()).contains("log label");
        assertThat(logged.fuel()).contains("e85");
        assertThat(unlogged.label()).contains("asked label");
        assertThat(unlogged.fuel()).contains("e10");
    }
}
