package org.nextpull.response;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.channel.SamplesBuilder;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanText;
import org.nextpull.pull.Candidate;
import org.nextpull.pull.SpeedSource;

/** A good pull of 3000 to 6000 rpm, a row every 5 rpm and 10 ms, each channel a function of the speed; for figures worked out by hand. */
final class Sweep {
    private static final int ROWS = 601;
    private static final double FROM_RPM = 3000;
    private static final double RPM_A_ROW = 5;
    private static final double S_A_ROW = 0.01;

    private final List<Channel> channels = new ArrayList<>();
    private final List<DoubleUnaryOperator> values = new ArrayList<>();
    private Optional<String> label = Optional.empty();
    private Optional<String> fuel = Optional.empty();

    private Sweep() {}

    /** Torque of 1 N.m for each 25 rpm: 120 N.m at 3000, 240 N.m at 6000 rpm. */
    static Sweep ofRisingTorque() {
        return new Sweep()
                .with(Channel.of(Role.TIME), rpm -> (rpm - FROM_RPM) / RPM_A_ROW * S_A_ROW)
                .with(Channel.of(Role.ENGINE_SPEED), rpm -> rpm)
                .with(Channel.of(Role.TORQUE), rpm -> rpm / 25);
    }

    static SweepPlan plan(String text) {
        return PlanText.read(text, "test.toml").value().orElseThrow();
    }

    Sweep with(Role role, double value) {
        return with(Channel.of(role), rpm -> value);
    }

    Sweep with(Channel channel, DoubleUnaryOperator ofRpm) {
        channels.add(channel);
        values.add(ofRpm);
        return this;
    }

    /** Words that the log itself has in its rows. */
    Sweep logged(String newLabel, String newFuel) {
        label = Optional.of(newLabel);
        fuel = Optional.of(newFuel);
        return this;
    }

    Candidate candidate() {
        SamplesBuilder builder = Samples.builder(channels);
        for (int row = 0; row < ROWS; row++) {
            builder.row(row + 2, label, fuel);
            for (int index = 0; index < values.size(); index++) {
                builder.set(index, values.get(index).applyAsDouble(FROM_RPM + RPM_A_ROW * row));
            }
        }
        Samples rows = builder.build();
        return new Candidate(
                1,
                "log.csv",
                new Candidate.Lines(2, ROWS + 1, (ROWS - 1) * S_A_ROW, S_A_ROW),
                Candidate.Kind.RISING,
                FROM_RPM,
                FROM_RPM + RPM_A_ROW * (ROWS - 1),
                () -> rows,
                List.of(),
                new SpeedSource(Channel.of(Role.ENGINE_SPEED), SpeedSource.Axis.ENGINE, 1),
                new Candidate.LambdaAlignment.NotApplied(),
                Samples.builder(channels).build(),
                Optional.empty(),
                List.of());
    }
}
