package org.nextpull.live;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.nextpull.channel.Block;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.finding.Finding;
import org.nextpull.intake.ColumnReader;
import org.nextpull.intake.capture.CaptureFolder;
import org.nextpull.intake.capture.CaptureReplay;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.intake.wire.ArrivalTime;
import org.nextpull.intake.wire.WireChain;
import org.nextpull.plan.SweepPlan;

/** Writes the rows of a capture as the text of a log, each number with all its digits, in the project's own units. */
final class RowsAsLog implements WireChain.Listener {
    /** Headers that say which unit the number under them is in; others of the same kind may follow. */
    private static final Map<Role, String> HEADERS = new LinkedHashMap<>(Map.of(
            Role.TIME, "time [s]",
            Role.ENGINE_SPEED, "engine speed [rpm]",
            Role.TORQUE, "torque [N.m]",
            Role.LAMBDA, "lambda",
            Role.ADVANCE, "spark advance [deg]",
            Role.EXHAUST_TEMPERATURE, "exhaust temp [K]",
            Role.COOLANT_TEMPERATURE, "coolant temp [K]",
            Role.INLET_AIR_TEMPERATURE, "inlet air temp [K]",
            Role.BAROMETER, "baro [Pa]",
            Role.KNOCK_EVENTS, "knock count"));

    private final List<Samples> parts = new ArrayList<>();

    private RowsAsLog() {}

    static String of(CaptureFolder folder, DayIntake intake, SweepPlan plan) throws IOException {
        RowsAsLog rows = new RowsAsLog();
        WireChain chain = new WireChain(intake.sources(), plan.log().hints(), new ColumnReader(), rows);
        ArrivalTime last = new ArrivalTime(0, 0);
        try (CaptureReplay replay = folder.replay()) {
            for (Optional<Arrival> next = replay.next(); next.isPresent(); next = replay.next()) {
                if (!next.get().source().equals(OperatorLines.SOURCE)) {
                    chain.accept(next.get());
                    last = next.get().at();
                }
            }
        }
        chain.finish(last);
        return rows.text();
    }

    private String text() {
        List<Channel> channels = new ArrayList<>();
        channels.add(Channel.of(Role.TIME));
        parts.get(0).channels().stream()
                .filter(channel -> channel.role() != Role.TIME && HEADERS.containsKey(channel.role()))
                .forEach(channels::add);
        channels.add(Channel.of(Role.THROTTLE));
        channels.add(Channel.of(Role.HUMIDITY));
        StringBuilder text = new StringBuilder(channels.stream()
                .map(channel -> switch (channel.role()) {
                    case THROTTLE -> "throttle [%]";
                    case HUMIDITY -> "humidity [%]";
                    default -> HEADERS.get(channel.role());
                })
                .collect(Collectors.joining(",")));
        text.append('\n');
        for (Samples samples : parts) {
            for (int row = 0; row < samples.rows(); row++) {
                for (Channel channel : channels) {
                    OptionalDouble value = samples.find(channel, row);
                    double scale = channel.role() == Role.THROTTLE || channel.role() == Role.HUMIDITY ? 100 : 1;
                    text.append(channel.equals(channels.get(0)) ? "" : ",");
                    value.ifPresent(number -> text.append(number * scale));
                }
                text.append('\n');
            }
        }
        return text.toString();
    }

    @Override
    public void rows(String source, Samples samples) {}

    @Override
    public void block(Block block) {
        parts.add(block.samples());
    }

    @Override
    public void said(ArrivalTime at, Finding finding) {}

    @Override
    public void fileComplete(Arrival.FileComplete file) {}
}
